#include "gauge_fit_page.h"

#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "judged_pages.h"
#include "judged_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::qt;

namespace {

/// The rows take what room there is but ask for little, so that the answers below stay in sight; they fold what does
/// not fit.
class RowsPlace : public QWidget {
 public:
  RowsPlace(widgets::ShimRows*& rows, QWidget* parent) : QWidget(parent) {
    rows = child_of<widgets::ShimRows>(static_cast<QWidget*>(this));
    rows_ = rows;
    widgets::lay<QVBoxLayout>(this)->addWidget(rows);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
  }
  [[nodiscard]] QSize sizeHint() const override {
    return {640, rows_->sizeHint().height() <= 250 ? rows_->sizeHint().height() : 212};
  }
  [[nodiscard]] QSize minimumSizeHint() const override { return {360, std::min(200, rows_->sizeHint().height())}; }

 private:
  widgets::ShimRows* rows_ = nullptr;
};

constexpr std::array<shim::Fit, 3> fits_by_key = {shim::Fit::tight, shim::Fit::snug, shim::Fit::loose};

}  // namespace

GaugeFitPage::GaugeFitPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent),
      notice_(child_of<widgets::Box>(this, QString(), QString(), "notice")),
      choice_(child_of<ShimChoice>(this)),
      rows_place_(std::make_unique<RowsPlace>(rows_, this).release()),
      line_(child_of<widgets::Text>(this, QString(), "soft")),
      asked_(child_of<widgets::Text>(this, QString(), "strong")),
      answers_(child_of<QWidget>(this)) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
  auto* column = widgets::lay<QVBoxLayout>(this, 10);
  column->addWidget(notice_);
  column->addWidget(choice_);
  column->addWidget(rows_place_, 1);
  column->addWidget(line_);
  column->addWidget(asked_);
  column->addWidget(answers_);
  build_answers();
  connect(rows_, &widgets::ShimRows::picked, this, &GaugeFitPage::pick);
  connect(choice_, &ShimChoice::chosen, this, [this](const std::string& shim) {
    choice_->hide();
    pick(shim);
  });
  connect(choice_, &ShimChoice::left, this, &GaugeFitPage::take_focus);
}

void GaugeFitPage::build_answers() {
  auto* row = widgets::lay<widgets::TurningRow>(answers_, 14);
  const std::array<std::pair<QString, QString>, 3> words = {{{tr("Tight"), tr("will not enter · key 1")},
                                                             {tr("Snug"), tr("enters with drag · key 2")},
                                                             {tr("Loose"), tr("has play · key 3")}}};
  const std::array<QString, 3> names = {QStringLiteral("tight"), QStringLiteral("snug"), QStringLiteral("loose")};
  for (std::size_t at = 0; at < words.size(); ++at) {
    auto* button = child_of<Button>(answers_, words[at].first, Button::Kind::answer);
    button->setObjectName(QStringLiteral("button-") + names[at]);
    button->set_second_line(words[at].second);
    connect(button, &Button::clicked, this, [this, at] { say_fit(fits_by_key[at]); });
    row->addWidget(button, 1);
    answer_buttons_.push_back(button);
  }
  const auto wider = [](const Button* one, const Button* other) {
    return one->sizeHint().width() < other->sizeHint().width();
  };
  const int widest = (*std::max_element(answer_buttons_.begin(), answer_buttons_.end(), wider))->sizeHint().width();
  for (Button* each : answer_buttons_) {
    each->setMinimumWidth(widest);
  }
}

const job::Advised* GaugeFitPage::advice_of_float() const {
  const job::Advised* advised = job::standing_advice(state(), step());
  return advised != nullptr && advised->at.step != step().id && trials() == 0 ? advised : nullptr;
}

std::optional<std::string> GaugeFitPage::advised_shim() const {
  if (const job::Advised* of_float = advice_of_float()) {
    return of_float->shim;
  }
  return judgement_ ? judgement_->advised.shim : std::nullopt;
}

std::optional<std::string> GaugeFitPage::chosen_shim() const {
  const auto found = state().shims.find(step().its_side());
  return found == state().shims.end() ? std::nullopt : std::optional(found->second);
}

std::optional<std::string> GaugeFitPage::shim_in_hand() const {
  if (picked_) {
    return picked_;
  }
  const bool to_be_tried = judgement_ && judgement_->advised.conclusion == job::Conclusion::try_shim;
  return to_be_tried && !chosen_shim() ? advised_shim() : std::nullopt;
}

void GaugeFitPage::refresh() {
  auto judged = job::judge(state(), step(), bench().context());
  fault_ = judged ? QString() : widgets::say(judged.error());
  judgement_ = judged ? *std::move(judged) : std::nullopt;
  show_hand();
}

void GaugeFitPage::show_hand() {
  show_notice();
  show_rows();
  show_answers();
}

void GaugeFitPage::show_notice() {
  if (notice_buttons_ != nullptr) {
    notice_buttons_->hide();
    notice_buttons_->deleteLater();
    notice_buttons_ = nullptr;
  }
  QString heading;
  QString text = fault_;
  const auto conclusion = judgement_ ? judgement_->advised.conclusion : job::Conclusion::question;
  if (judgement_ && conclusion == job::Conclusion::contradiction) {
    heading = tr("Two trials cannot both be right");
    text = contradiction_text(*judgement_) + QStringLiteral(" ") + tr("Press a shim below to try it again.");
    notice_buttons_ = child_of<QWidget>(static_cast<QWidget*>(notice_));
    auto* row = widgets::lay<QHBoxLayout>(notice_buttons_, 10);
    for (const std::size_t trial : contradicting_trials(*judgement_)) {
      auto* button = child_of<Button>(notice_buttons_, tr("Take back trial %1").arg(trial + 1));
      button->setObjectName(QStringLiteral("button-take-back-%1").arg(trial + 1));
      connect(button, &Button::clicked, this, [this, trial] { take_back(trial); });
      row->addWidget(button);
    }
    row->addStretch(1);
    notice_->body()->addWidget(notice_buttons_);
  } else if (judgement_ &&
             (conclusion == job::Conclusion::tray_too_thick || conclusion == job::Conclusion::tray_too_thin)) {
    heading =
        conclusion == job::Conclusion::tray_too_thick ? tr("The tray begins too thick") : tr("The tray ends too thin");
    text = widgets::say(judgement_->advised.reason) + QStringLiteral(" ") +
           tr("A wrong trial would do the same: try the last shim once more.");
  } else if (const job::Advised* of_float = advice_of_float();
             of_float != nullptr && of_float->shim && !chosen_shim()) {
    heading = tr("The float asks for %1").arg(qt(*of_float->shim));
    text = tr("It was measured in the assembly before. Try %1 first, or take it as it is.").arg(qt(*of_float->shim));
  }
  notice_->set_heading(heading);
  notice_->set_text(text);
  notice_->setVisible(!heading.isEmpty() || !text.isEmpty());
}

void GaugeFitPage::show_rows() {
  rows_place_->setVisible(judgement_.has_value());
  line_->setVisible(judgement_.has_value());
  if (!judgement_) {
    return;
  }
  const job::Conclusion conclusion = judgement_->advised.conclusion;
  const auto chosen = chosen_shim();
  const QString word = chosen                                    ? tr("taken")
                       : conclusion == job::Conclusion::fit_shim ? tr("fit this one")
                                                                 : tr("try this one");
  const ShimInHand hand{chosen ? chosen : advised_shim(), word, picked_};
  const FoldWords folds = gauge_fit_folds(*judgement_);
  rows_->set_pickable(!state().closed);
  rows_->set_fold_words(folds.above, folds.below);
  const auto tray = job::tray_of(state(), step().its_side(), bench().context());
  rows_->set_rows(gauge_fit_rows(*judgement_, tray, hand), word);
  if (const auto shown = rows_->shown(); picked_ && std::find(shown.begin(), shown.end(), *picked_) == shown.end()) {
    rows_->set_rows(gauge_fit_rows(*judgement_, tray, {std::nullopt, word, picked_}), word);  // then those around it
  }
  const bool said_above = conclusion == job::Conclusion::contradiction ||
                          conclusion == job::Conclusion::tray_too_thick || conclusion == job::Conclusion::tray_too_thin;
  line_->setText(gauge_fit_line(*judgement_));
  line_->setVisible(!said_above);
  rows_place_->updateGeometry();
}

void GaugeFitPage::show_answers() {
  const auto shim = shim_in_hand();
  answers_->setVisible(shim && !state().closed);
  asked_->setVisible(shim && picked_);
  asked_->setText(picked_ ? tr("How does the gauge go in with %1?").arg(qt(*picked_)) : QString());
}

widgets::StripText GaugeFitPage::strip() const {
  const QString bearing = bearing_words(step().its_side());
  if (const auto chosen = chosen_shim(); chosen && !picked_) {
    return {widgets::Mark::none, tr("Fit %1").arg(qt(*chosen)), tr("%1, taken").arg(bearing), false};
  }
  if (const auto shim = shim_in_hand()) {
    return {widgets::Mark::none, tr("Try %1").arg(qt(*shim)), tr("%1, trial %2").arg(bearing).arg(trials() + 1), false};
  }
  if (!judgement_ || job::passed(step_state())) {
    return {};
  }
  switch (judgement_->advised.conclusion) {
    case job::Conclusion::fit_shim:
      return {widgets::Mark::none, tr("Fit %1").arg(qt(judgement_->advised.shim.value_or(std::string()))),
              tr("%1, by the trials").arg(bearing), false};
    case job::Conclusion::contradiction:
      return {widgets::Mark::not_equal, tr("Trials contradict"), bearing, true};
    case job::Conclusion::tray_too_thick:
      return {widgets::Mark::too_large, tr("Tray too thick"), bearing, true};
    case job::Conclusion::tray_too_thin:
      return {widgets::Mark::too_small, tr("Tray too thin"), bearing, true};
    default:
      return {};
  }
}

std::vector<FootAction> GaugeFitPage::actions() {
  std::vector<FootAction> all;
  if (const std::size_t count = trials(); count > 0) {
    all.push_back(
        {"take-back", tr("Take back trial %1").arg(count), [this, count] { take_back(count - 1); }, false, true, true});
  }
  if (judgement_) {
    all.push_back({"another-shim", tr("Another shim"), [this] { ask_for_another(); }, false, true, true});
    add_taking(all, judgement_->advised.conclusion == job::Conclusion::fit_shim);
  }
  return all;
}

void GaugeFitPage::add_taking(std::vector<FootAction>& actions, bool settled) {
  const auto chosen = chosen_shim();
  if (picked_ && picked_ != chosen) {
    const std::string other = *picked_;
    const bool advised = job::advises(job::standing_advice(state(), step()), other);
    actions.push_back({"take-other",
                       advised ? tr("Take %1").arg(qt(other)) : tr("Take %1 with reason...").arg(qt(other)),
                       [this, other] { take(other); }});
  }
  const auto advised = advised_shim();
  if (!chosen && advised && advised != picked_ && (settled || advice_of_float() != nullptr)) {
    const std::string& shim = *advised;
    actions.push_back({"take", tr("Take %1").arg(qt(shim)), [this, shim] { take(shim); }, settled});
  }
}

void GaugeFitPage::take_focus() {
  if (!choice_->isHidden()) {
    choice_->take_focus();
    return;
  }
  // Not to an answer: Enter left over from before would say what nobody felt. Up and Down go on from the shim in hand.
  if (const auto shim = shim_in_hand()) {
    rows_->make_current(*shim);
  }
  rows_->take_focus();
}

void GaugeFitPage::pick(const std::string& shim) {
  const bool back = picked_ == shim || (!chosen_shim() && advised_shim() == shim && shim_in_hand() && !picked_);
  picked_ = back ? std::nullopt : std::optional(shim);
  show_hand();
  emit look_changed();
  take_focus();
}

bool GaugeFitPage::take_burst(const std::string& text) {
  const auto shim = shim_marked(job::tray_of(state(), step().its_side(), bench().context()), text);
  if (!shim) {
    return false;
  }
  picked_ = *shim;
  show_hand();
  emit look_changed();
  take_focus();
  return true;
}

bool GaugeFitPage::take_digit(int digit) {
  if (digit < 1 || digit > 3 || answers_->isHidden()) {
    return false;
  }
  say_fit(fits_by_key[static_cast<std::size_t>(digit) - 1]);
  return true;
}

void GaugeFitPage::say_fit(shim::Fit fit) {
  const auto shim = shim_in_hand();
  if (!shim) {
    return;
  }
  const auto before = std::exchange(picked_, std::nullopt);
  if (!send(job::TryShim{step().id, *shim, fit})) {
    picked_ = before;
    return;
  }
  emit look_changed();
  take_focus();
}

void GaugeFitPage::take(const std::string& shim) {
  const auto choose = [this, shim](const std::string& reason) {
    const auto before = std::exchange(picked_, std::nullopt);
    const bool kept = send(job::ChooseShim{step().id, shim, reason});
    if (!kept) {
      picked_ = before;
    }
    return kept;
  };
  if (job::advises(job::standing_advice(state(), step()), shim)) {
    choose({});
    return;
  }
  emit asks({tr("%1 is not the shim the trials advise: why is it taken?").arg(qt(shim)),
             tr("Take %1 for this reason").arg(qt(shim)), true, choose});
}

void GaugeFitPage::take_back(std::size_t trial) {
  const auto entries = job::present_trials(state(), step());
  if (trial < entries.size() &&
      send(job::Withdraw{entries[trial]->seq, widgets::plain(tr("trial taken back at the bench"))}, false)) {
    picked_.reset();
    show_hand();
    emit look_changed();
  }
}

void GaugeFitPage::ask_for_another() {
  const auto tray = job::tray_of(state(), step().its_side(), bench().context());
  const bool seated = judgement_ && judgement_->answer.gauge_fit && judgement_->answer.gauge_fit->seat;
  if (rows_->shown().size() >= tray.size() || !seated) {
    rows_->take_focus();
    return;
  }
  choice_->show_tray(tr("Which shim is tried?"), {}, tray, picked_ ? picked_ : advised_shim());
  choice_->take_focus();
}

StepPage* make_gauge_fit_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return std::make_unique<GaugeFitPage>(bench, step, parent).release();
}

}  // namespace shimwright::bench
