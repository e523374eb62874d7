#include "depth_page.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "depth_sum.h"
#include "judged_pages.h"
#include "judged_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/turning_row.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::NumberField;
using widgets::qt;

namespace {

constexpr int most_places = 8;  // made at once, so that Tab goes from place to place; shown as they are wanted
constexpr int columns_of_places = 2;

}  // namespace

DepthPage::DepthPage(Workbench& bench, const sheet::Step& step, QWidget* parent) : StepPage(bench, step, parent) {
  auto* outer = widgets::lay<QVBoxLayout>(this, 12);
  choice_ = child_of<ShimChoice>(this);
  outer->addWidget(choice_);
  auto* row = widgets::lay_in<widgets::TurningRow>(outer, 24);
  auto* left = child_of<QWidget>(this);
  left->setFixedWidth(340);
  row->addWidget(left);
  auto* fields_column = widgets::lay<QVBoxLayout>(left, 8);
  // Two side by side, so that the stamp is in sight with them.
  places_ = widgets::lay_in<QGridLayout>(fields_column, 8);
  for (int column = 0; column < columns_of_places; ++column) {
    places_->setColumnStretch(column, 1);
  }
  build_fields(fields_column);
  fields_column->addStretch(1);
  card_ = child_of<DepthCard>(this);
  row->addWidget(card_, 1);
  connect(choice_, &ShimChoice::chosen, this, [this](const std::string& shim) {
    choice_->hide();
    take(shim);
  });
  connect(choice_, &ShimChoice::left, this, &DepthPage::take_focus);
  connect(this, &StepPage::refused, this, &DepthPage::show_refusal);
}

void DepthPage::build_fields(QVBoxLayout* column) {
  const sheet::DepthSpec* spec = depth_spec();
  const int asked = spec == nullptr ? 2 : spec->places;
  for (int place = 1; place <= std::max(asked, most_places); ++place) {
    add_place(place);
  }
  show_places(static_cast<std::size_t>(asked));
  reference_ = child_of<NumberField>(this, tr("Reference"), quantity::Unit::millimetre);
  reference_->edit()->setObjectName(QStringLiteral("field-reference"));
  reference_->set_narrow();
  places_->addWidget(reference_, most_places, 0, Qt::AlignTop);
  connect(reference_, &NumberField::edited, this, &DepthPage::look_at_typed);
  connect(reference_, &NumberField::entered, this, [this] { go_to_field_after(reference_); });
  stamp_ = child_of<SignedField>(
      this, widgets::with_length_unit(tr("Stamp on the new pack, %1, mm")).arg(disc_words(step().its_side())));
  stamp_->name(QStringLiteral("stamp"));
  stamp_->setVisible(spec != nullptr && spec->stamp_used);
  column->addWidget(stamp_);
  connect(stamp_, &SignedField::edited, this, &DepthPage::look_at_typed);
  connect(stamp_, &SignedField::entered, this, [this] { keep(); });
  other_sign_ = child_of<widgets::Text>(this, QString(), "small");
  column->addWidget(other_sign_);
  gauge_ = child_of<InstrumentBox>(this, tr("Depth gauge"), sheet::InstrumentKind::depth_gauge);
  gauge_->setObjectName(QStringLiteral("box-instrument"));
  column->addWidget(gauge_);
  more_ = child_of<widgets::Button>(this, tr("One place more"));
  more_->setObjectName(QStringLiteral("button-more-places"));
  places_->addWidget(more_, most_places, 1, Qt::AlignVCenter);
  connect(more_, &widgets::Button::clicked, this, [this] {
    show_places(places_shown_ + 1);
    readings_[places_shown_ - 1]->take_focus();
  });
}

const sheet::DepthSpec* DepthPage::depth_spec() const {
  const auto& depth = spec().side(step().its_side()).depth;
  return depth ? &*depth : nullptr;
}

void DepthPage::add_place(int place) {
  auto* field = child_of<NumberField>(this, tr("Depth, place %1").arg(place), quantity::Unit::millimetre);
  field->edit()->setObjectName(QStringLiteral("field-depth-%1").arg(place));
  field->set_narrow();
  places_->addWidget(field, (place - 1) / columns_of_places, (place - 1) % columns_of_places, Qt::AlignTop);
  readings_.push_back(field);
  connect(field, &NumberField::edited, this, &DepthPage::look_at_typed);
  connect(field, &NumberField::entered, this, [this, field] { go_to_field_after(field); });
}

void DepthPage::show_places(std::size_t count) {
  places_shown_ = std::min(count, readings_.size());
  for (std::size_t at = 0; at < readings_.size(); ++at) {
    readings_[at]->setVisible(at < places_shown_);
  }
  if (more_ != nullptr) {
    more_->setEnabled(places_shown_ < readings_.size());
  }
}

std::vector<NumberField*> DepthPage::fields() const {
  std::vector<NumberField*> all(readings_.begin(), readings_.begin() + static_cast<std::ptrdiff_t>(places_shown_));
  all.push_back(reference_);
  if (!stamp_->isHidden()) {
    all.push_back(stamp_->number());
  }
  return all;
}

void DepthPage::go_to_field_after(const NumberField* field) {
  const auto all = fields();
  const auto at = std::find(all.begin(), all.end(), field);
  if (at == all.end() || std::next(at) == all.end()) {
    keep();
  } else {
    (*std::next(at))->take_focus();
  }
}

DepthPage::Typed DepthPage::typed() const {
  Typed all;
  for (const NumberField* each : readings_) {
    const bool asked = depth_spec() != nullptr && static_cast<int>(all.readings.size()) < depth_spec()->places;
    if (asked || !each->blank()) {
      all.readings.push_back(each->text());
    }
  }
  all.reference = reference_->text();
  all.stamp = stamp_->text();
  return all;
}

void DepthPage::refresh() {
  auto judged = job::judge(state(), step(), bench().context());
  fault_ = judged ? QString() : widgets::say(judged.error());
  judgement_ = judged ? *std::move(judged) : std::nullopt;
  gauge_->offer(bench().context().instruments, bench().now());
  if (job::present_depths(state(), step()) == nullptr) {
    kept_.reset();  // not kept yet, or taken back: what stands in the fields is unsent
    typed_else_ = has_unsent();
  } else if (!kept_) {
    show_kept();
  }
  if (chosen_shim()) {
    choice_->hide();
  }
  show_card();
}

/// What an earlier sitting kept stands in the fields, to be seen and measured again.
void DepthPage::show_kept() {
  const job::DepthsRead* depths = job::present_depths(state(), step());
  if (depths == nullptr) {
    return;
  }
  show_places(std::max(places_shown_, depths->readings.size()));
  for (std::size_t at = 0; at < std::min(places_shown_, depths->readings.size()); ++at) {
    readings_[at]->set_number(depths->readings[at]);
  }
  reference_->set_number(depths->reference);
  if (depths->stamp) {
    stamp_->set_number(*depths->stamp);
  }
  if (depths->instrument) {
    gauge_->choose(depths->instrument->id);
  }
  kept_ = typed();
  typed_else_ = false;
}

bool DepthPage::has_unsent() const {
  const auto all = fields();
  const bool any = std::any_of(all.begin(), all.end(), [](const NumberField* each) { return !each->blank(); });
  return any && (!kept_ || typed() != *kept_);
}

void DepthPage::look_at_typed() {
  if (card_ == nullptr) {
    return;
  }
  const bool else_now = has_unsent();
  if (else_now != typed_else_) {
    typed_else_ = else_now;
    show_card();
    emit look_changed();
  }
}

void DepthPage::show_card() {
  other_sign_->clear();
  if (!judgement_) {
    card_->show_nothing(fault_.isEmpty() ? tr("Type each value and press Enter; the sum follows.") : fault_);
  } else {
    card_->show_judgement(*judgement_, typed_else_);
    other_sign_->setText(typed_else_ ? QString() : other_sign_words(*judgement_));
  }
  if (!other_sign_->text().isEmpty()) {
    other_sign_->setText(other_sign_->text() + QStringLiteral(" ") + tr("Read it on the pack again."));
  } else if (!stamp_->isHidden()) {
    other_sign_->setText(tr("0.0 stamped is a value; leave nothing blank."));
  }
  other_sign_->setVisible(!other_sign_->text().isEmpty());
}

bool DepthPage::keep() {
  for (NumberField* each : fields()) {
    // Ctrl+Enter comes from a field that Enter has not read yet.
    if (each->faulty() || (!each->blank() && !each->readable())) {
      each->take_focus();
      return false;
    }
  }
  const Typed now = typed();
  const auto before = std::exchange(kept_, now);
  typed_else_ = false;
  if (!send(job::EnterDepths{step().id, now.readings, now.reference, now.stamp, gauge_->id()})) {
    kept_ = before;
    look_at_typed();
    return false;
  }
  emit look_changed();
  return true;
}

void DepthPage::show_refusal(const Error& error) {
  const QString place = qt(error.place);
  if (place.endsWith(QLatin1String("/stamp"))) {
    stamp_->set_fault(widgets::say(error));
    stamp_->take_focus();
  } else if (place.endsWith(QLatin1String("/reference"))) {
    reference_->set_fault(widgets::say(error));
    reference_->take_focus();
  } else if (const qsizetype at = place.indexOf(QLatin1String("/readings/")); at >= 0) {
    const auto number = static_cast<std::size_t>(place.mid(at + 10).toInt());
    if (number >= 1 && number <= readings_.size()) {
      readings_[number - 1]->set_fault(widgets::say(error));
      readings_[number - 1]->take_focus();
    }
  }
}

std::optional<std::string> DepthPage::chosen_shim() const {
  const auto found = state().shims.find(step().its_side());
  return found == state().shims.end() ? std::nullopt : std::optional(found->second);
}

widgets::StripText DepthPage::strip() const {
  const QString small = tr("%1, by depth").arg(bearing_words(step().its_side()));
  if (const auto chosen = chosen_shim()) {
    return {widgets::Mark::none, tr("Fit %1").arg(qt(*chosen)), tr("%1, taken").arg(bearing_words(step().its_side())),
            false};
  }
  if (!judgement_ || typed_else_ || job::passed(step_state())) {
    return {};
  }
  const job::Advised& advised = judgement_->advised;
  switch (advised.conclusion) {
    case job::Conclusion::fit_shim:
      return {widgets::Mark::none, tr("Fit %1").arg(qt(advised.shim.value_or(std::string()))), small, false};
    case job::Conclusion::edge:
      return {widgets::Mark::on_limit,
              advised.candidates.empty()
                  ? tr("On the border")
                  : tr("%1 or %2").arg(qt(advised.candidates.front()), qt(advised.candidates.back())),
              small, false};
    case job::Conclusion::tilted:
      return {widgets::Mark::not_equal, tr("Tilted"), tr("measure again, %1").arg(bearing_words(step().its_side())),
              true};
    case job::Conclusion::impossible:
      return {widgets::Mark::not_equal, tr("Cannot be"), small, true};
    case job::Conclusion::outside:
      return {widgets::Mark::not_equal, tr("Outside the tray"), small, true};
    case job::Conclusion::far:
      return {widgets::Mark::on_limit, tr("No size near"), small, false};
    default:
      return {};
  }
}

std::vector<FootAction> DepthPage::actions() {
  std::vector<FootAction> all;
  if (typed_else_) {
    all.push_back({"take", tr("Keep the depths"), [this] { keep(); }, true});
    return all;
  }
  if (judgement_) {
    all.push_back({"another-shim", tr("Another shim"), [this] { ask_for_another(); }, false, true, true});
    add_taking(all, judgement_->advised);
  }
  return all;
}

void DepthPage::add_taking(std::vector<FootAction>& actions, const job::Advised& advised) {
  if (chosen_shim()) {
    return;
  }
  if (advised.conclusion == job::Conclusion::edge) {
    for (const std::string& shim : advised.candidates) {
      actions.push_back({"take-" + shim, tr("Take %1").arg(qt(shim)), [this, shim] { take(shim); }});
    }
  } else if (advised.shim &&
             (advised.conclusion == job::Conclusion::fit_shim || advised.conclusion == job::Conclusion::far)) {
    const std::string shim = *advised.shim;
    const bool plain = job::advises(job::standing_advice(state(), step()), shim);
    actions.push_back({"take-shim", plain ? tr("Take %1").arg(qt(shim)) : tr("Take %1 with reason...").arg(qt(shim)),
                       [this, shim] { take(shim); }, plain});
  }
  if (advised.conclusion == job::Conclusion::edge || advised.conclusion == job::Conclusion::tilted) {
    actions.push_back({"measure-again", tr("Measure again"), [this] { readings_.front()->take_focus(); }, true});
  }
}

void DepthPage::ask_for_another() {
  choice_->show_tray(tr("Which shim is taken in place of it?"), {},
                     job::tray_of(state(), step().its_side(), bench().context()),
                     chosen_shim() ? chosen_shim()
                     : judgement_  ? judgement_->advised.shim
                                   : std::nullopt);
  choice_->take_focus();
}

void DepthPage::take(const std::string& shim) {
  const auto choose = [this, shim](const std::string& reason) {
    return send(job::ChooseShim{step().id, shim, reason});
  };
  if (job::advises(job::standing_advice(state(), step()), shim)) {
    choose({});
    return;
  }
  emit asks({tr("%1 is not the shim the depths advise: why is it taken?").arg(qt(shim)),
             tr("Take %1 for this reason").arg(qt(shim)), true, choose});
}

void DepthPage::take_focus() {
  const auto all = fields();
  const auto blank = std::find_if(all.begin(), all.end(), [](const NumberField* each) { return each->blank(); });
  (blank == all.end() ? all.front() : *blank)->take_focus();
}

StepPage* make_depth_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return std::make_unique<DepthPage>(bench, step, parent).release();
}

}  // namespace shimwright::bench
