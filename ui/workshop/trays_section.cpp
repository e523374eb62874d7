#include "trays_section.h"

#include <QLineEdit>
#include <algorithm>
#include <set>
#include <utility>

#include "register_row.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "tray_words.h"
#include "widgets_away.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;

namespace {

constexpr std::int64_t most_jobs = 20;  // each is folded: more would keep the page waiting

std::vector<store::KeptInstrument> micrometers_of(const store::Registers& registers) {
  std::vector<store::KeptInstrument> micrometers;
  if (auto instruments = registers.kept_instruments()) {
    for (store::KeptInstrument& each : *instruments) {
      if (each.instrument.kind == sheet::InstrumentKind::micrometer) {
        micrometers.push_back(std::move(each));
      }
    }
  }
  return micrometers;
}

store::ShimStock stock_in(const store::Tray& tray, const std::string& shim) {
  const auto found = tray.stock.find(shim);
  return found == tray.stock.end() ? store::ShimStock() : found->second;
}

void remove_shim(store::Tray& tray, const std::string& mark) {
  std::erase_if(tray.shims, [&mark](const job::TrayShim& each) { return each.id == mark; });
  tray.stock.erase(mark);
}

store::Tray tray_of_sheet(const sheet::SideSpec& side, std::string id) {
  store::Tray tray{std::move(id), side.tray_name, {}};
  for (const sheet::SpecShim& each : side.tray) {
    tray.shims.push_back({each.id, each.thickness, each.u_mm, std::nullopt});
  }
  return tray;
}

}  // namespace

TraysSection::TraysSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent), store_(&store), ways_(std::move(ways)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Shim trays"), "heading"));
  told_ = child_of<widgets::Text>(this, QString(), "strong");
  told_->setObjectName(QStringLiteral("trays-told"));
  told_->hide();
  column->addWidget(told_);
  place_ = widgets::lay_in<QVBoxLayout>(column, 12);
  list_ = child_of<QWidget>(this);
  static_cast<void>(widgets::lay<QVBoxLayout>(list_, 8));
  column->addWidget(list_);
}

void TraysSection::refresh() {
  if (!has_unsent()) {
    close();
  }
  show_list();
}

void TraysSection::show_list() {
  empty_column(*list_);
  const auto trays = store_->registers().trays();
  if (!trays) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(trays.error()), "error"));
    return;
  }
  if (trays->empty()) {
    list_->layout()->addWidget(child_of<widgets::Text>(
        list_, tr("No tray is kept here yet: jobs take the sizes of their spec sheet."), "soft"));
  }
  const auto demands = store::wanted_by_open_jobs(*store_, by_now(ways_), most_jobs);
  if (!demands) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(demands.error()), "error"));
  }
  for (const store::Tray& each : *trays) {
    const auto demand = demands ? demands->find(each.name) : std::map<std::string, store::TrayDemand>::const_iterator();
    show_tray(each, demands && demand != demands->end() ? demand->second : store::TrayDemand());
  }
  if (!store_->looks_only()) {
    offer_trays(*trays);
  }
}

void TraysSection::show_tray(const store::Tray& tray, const store::TrayDemand& demand) {
  auto* heading = child_of<widgets::Text>(list_, qt(tray.name), "large");
  list_->layout()->addWidget(heading);
  list_->layout()->addWidget(child_of<widgets::Text>(list_, demand_words(demand), "soft"));
  const auto today = store::as_it_lies(*store_, tray);
  if (!today) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(today.error()), "error"));
    return;
  }
  for (std::size_t at = 0; at < tray.shims.size(); ++at) {
    const job::TrayShim& shim = tray.shims[at];
    const auto wanted = demand.wanted.find(shim.id);
    const ShimLine line{shim, stock_in(tray, shim.id), today->shims[at].count,
                        wanted == demand.wanted.end() ? 0.0 : wanted->second};
    auto* row = child_of<RegisterRow>(list_, qt(shim.id), shim_words(line));
    row->setObjectName(QStringLiteral("row-%1-%2").arg(qt(tray.name), qt(shim.id)));
    row->set_mark(mark_of(line));
    row->setEnabled(!store_->looks_only());
    list_->layout()->addWidget(row);
    connect(row, &RegisterRow::clicked, this, [this, tray, shim] {
      open(tray, {shim, stock_in(tray, shim.id)}, false);
    });
  }
  auto* add = child_of<widgets::Button>(list_, tr("One more size in %1").arg(qt(tray.name)));
  add->setObjectName(QStringLiteral("button-add-shim-") + qt(tray.name));
  add->setEnabled(!store_->looks_only());
  list_->layout()->addWidget(add);
  list_->layout()->setAlignment(add, Qt::AlignLeft);
  connect(add, &QPushButton::clicked, this, [this, tray] { open(tray, {}, true); });
}

/// Trays that spec sheets name and the workshop does not keep yet.
void TraysSection::offer_trays(const std::vector<store::Tray>& kept) {
  const auto issues = store_->registers().spec_sheets();
  if (!issues) {
    return;
  }
  std::set<std::string> known;
  for (const store::Tray& each : kept) {
    known.insert(each.name);
  }
  for (const store::SheetIssue& issue : *issues) {
    const auto spec = sheet::read_spec_sheet(issue.json);
    if (!spec) {
      continue;
    }
    for (const job::Side side : {job::Side::lower, job::Side::upper}) {
      if (known.insert(spec->side(side).tray_name).second) {
        offer(*spec, side);
      }
    }
  }
}

void TraysSection::offer(const sheet::SpecSheet& spec, job::Side side) {
  const store::Tray tray = tray_of_sheet(spec.side(side), ids_.id(ways_.clock().at_ms));
  auto* begin = child_of<widgets::Button>(list_, tr("Begin the tray %1").arg(qt(tray.name)));
  begin->set_second_line(tr("with the sizes of its spec sheet"));
  begin->setMinimumHeight(widgets::pixels::answer);
  begin->setObjectName(QStringLiteral("button-begin-tray-") + qt(tray.name));
  list_->layout()->addWidget(begin);
  list_->layout()->setAlignment(begin, Qt::AlignLeft);
  connect(begin, &QPushButton::clicked, this, [this, tray] {
    if (put(tray)) {
      close(tr("The tray %1 is begun: measure and count its shims.").arg(qt(tray.name)));
      show_list();
    }
  });
}

void TraysSection::open(const store::Tray& tray, const ShimEntered& shim, bool is_new) {
  if (has_unsent()) {
    form_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  form_ = child_of<ShimForm>(this, shim, is_new, micrometers_of(store_->registers()), ways_.clock().at_ms);
  form_->setObjectName(QStringLiteral("form-shim"));
  place_->addWidget(form_);
  connect(form_, &FormCard::keep_wanted, this, [this, tray, mark = shim.shim.id] { keep(tray, mark); });
  connect(form_, &FormCard::leave_wanted, this, [this] { close(); });
  connect(form_, &ShimForm::taking_out_wanted, this, [this, tray, mark = shim.shim.id] { take_out(tray, mark); });
  form_->show();
  form_->findChild<QLineEdit*>()->setFocus(Qt::OtherFocusReason);
  show_form(*form_);
}

void TraysSection::keep(store::Tray tray, const std::string& mark_before) {
  auto entered = form_->shim();
  if (!entered) {
    return;
  }
  remove_shim(tray, mark_before);
  tray.shims.push_back(entered->shim);
  if (entered->stock != store::ShimStock()) {
    tray.stock[entered->shim.id] = entered->stock;
  }
  if (put(tray)) {
    close(tr("Kept."));
    show_list();
  }
}

void TraysSection::take_out(store::Tray tray, const std::string& mark) {
  remove_shim(tray, mark);
  if (put(tray)) {
    close(tr("%1 is out of the tray; jobs that used it keep what they knew of it.").arg(qt(mark)));
    show_list();
  }
}

bool TraysSection::put(const store::Tray& tray) {
  const auto put = store_->registers().put(tray, by_now(ways_));
  if (put) {
    return true;
  }
  if (form_) {
    form_->tell(put.error());
  } else {
    tell(widgets::say(put.error()), true);
  }
  return false;
}

void TraysSection::tell(const QString& sentence, bool bad) {
  widgets::set_part(told_, bad ? "error" : "strong");
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
}

void TraysSection::close(const QString& told) {
  if (form_) {
    form_->hide();
    form_->deleteLater();
  }
  form_ = nullptr;
  tell(told, false);
}

}  // namespace shimwright::workshop
