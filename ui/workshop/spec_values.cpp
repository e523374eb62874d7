#include "spec_values.h"

#include <QCoreApplication>
#include <QStringList>
#include <functional>

#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"

namespace shimwright::workshop {

namespace {

using sheet::SideSpec;
using widgets::qt;

struct SpecWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

/// What a side says of one value; blank where it has none.
using OfSide = std::function<QString(const SideSpec&)>;

class SideRows {
 public:
  explicit SideRows(const sheet::SpecSheet& spec) : spec_(spec) {}

  /// Where no side has the value there is no row.
  void add(const QString& name, const QString& unit, const OfSide& text, const OfSide& from) {
    const QString lower = text(spec_.lower);
    const QString upper = text(spec_.upper);
    if (lower.isEmpty() && upper.isEmpty()) {
      return;
    }
    QStringList sources{lower.isEmpty() ? QString() : from(spec_.lower),
                        upper.isEmpty() ? QString() : from(spec_.upper)};
    sources.removeAll(QString());
    sources.removeDuplicates();
    const auto shown = [](const QString& value) { return value.isEmpty() ? QStringLiteral("–") : value; };
    rows_.push_back({name, shown(lower), shown(upper), unit, sources.join(QStringLiteral("; "))});
  }
  [[nodiscard]] std::vector<SideRow> rows() && { return std::move(rows_); }

 private:
  const sheet::SpecSheet& spec_;
  std::vector<SideRow> rows_;
};

/// Sheets have up to six decimals; none of them is rounded away.
QString decimals(double number, int least) {
  QString text = QString::number(number, 'f', 6);
  while (text.endsWith(QLatin1Char('0')) && text.size() - text.indexOf(QLatin1Char('.')) - 1 > least) {
    text.chop(1);
  }
  return widgets::number_text(text.toStdString());
}

QString yes_or_no(bool yes) {
  return yes ? SpecWords::tr("yes") : SpecWords::tr("no");
}

const QString& unit_mm() {
  static const QString unit = QStringLiteral("mm");
  return unit;
}

/// A value of the gauge fit or of the depth method, blank for a side that uses the other one.
OfSide in_gauge_fit(std::function<QString(const sheet::GaugeFitSpec&)> text) {
  return [text = std::move(text)](const SideSpec& side) { return side.gauge_fit ? text(*side.gauge_fit) : QString(); };
}
OfSide in_depth(std::function<QString(const sheet::DepthSpec&)> text) {
  return [text = std::move(text)](const SideSpec& side) { return side.depth ? text(*side.depth) : QString(); };
}
OfSide in_float(std::function<QString(const sheet::FloatSpec&)> text) {
  return [text = std::move(text)](const SideSpec& side) { return text(side.disc_float); };
}

void add_shim(SideRows& rows) {
  const OfSide tray_source = [](const SideSpec& side) { return qt(side.tray_source); };
  rows.add(
      SpecWords::tr("Shim found by"), {},
      [](const SideSpec& side) {
        return side.method == sheet::Method::depth ? SpecWords::tr("depth") : SpecWords::tr("gauge fit");
      },
      [](const SideSpec& side) {
        return side.gauge_fit ? qt(side.gauge_fit->source) : side.depth ? qt(side.depth->source) : QString();
      });
  rows.add(
      SpecWords::tr("Tray"), {},
      [](const SideSpec& side) { return SpecWords::tr("%1, %2 sizes").arg(qt(side.tray_name)).arg(side.tray.size()); },
      tray_source);
}

void add_gauge_fit(SideRows& rows) {
  using sheet::GaugeFitSpec;
  const OfSide from = in_gauge_fit([](const GaugeFitSpec& fit) { return qt(fit.source); });
  rows.add(SpecWords::tr("Snug band"), unit_mm(),
           in_gauge_fit([](const GaugeFitSpec& fit) { return millimetres(fit.snug_band); }), from);
  rows.add(SpecWords::tr("Feel, standard uncertainty"), unit_mm(),
           in_gauge_fit([](const GaugeFitSpec& fit) { return decimals(fit.feel_u_mm, 3); }), from);
  rows.add(SpecWords::tr("Order of the trials"), {}, in_gauge_fit([](const GaugeFitSpec& fit) {
             return fit.thick_to_thin ? SpecWords::tr("thick to thin") : SpecWords::tr("fewest trials");
           }),
           from);
  rows.add(
      SpecWords::tr("Seat expected, mean and standard deviation"), unit_mm(), in_gauge_fit([](const GaugeFitSpec& fit) {
        return fit.prior ? SpecWords::tr("%1, %2").arg(decimals(fit.prior->mean_mm, 3), decimals(fit.prior->sd_mm, 3))
                         : QString();
      }),
      in_gauge_fit([](const GaugeFitSpec& fit) { return fit.prior ? qt(fit.prior->source) : QString(); }));
}

void add_depth(SideRows& rows) {
  using sheet::DepthSpec;
  const OfSide from = in_depth([](const DepthSpec& depth) { return qt(depth.source); });
  rows.add(SpecWords::tr("Opposite places measured"), {},
           in_depth([](const DepthSpec& depth) { return QString::number(depth.places); }), from);
  rows.add(SpecWords::tr("Constants added"), unit_mm(), in_depth([](const DepthSpec& depth) {
             QStringList all;
             for (const sheet::DepthConstant& each : depth.constants) {
               all << QStringLiteral("%1 (%2)").arg(millimetres(each.add), qt(each.name));
             }
             return all.join(QStringLiteral("; "));
           }),
           from);
  rows.add(SpecWords::tr("Stamp on the new pack used"), {},
           in_depth([](const DepthSpec& depth) { return yes_or_no(depth.stamp_used); }), from);
  rows.add(SpecWords::tr("Largest spread over the places"), unit_mm(),
           in_depth([](const DepthSpec& depth) { return millimetres(depth.max_spread); }), from);
  rows.add(SpecWords::tr("Depth reading, standard uncertainty"), unit_mm(),
           in_depth([](const DepthSpec& depth) { return decimals(depth.u_reading_mm, 3); }), from);
  rows.add(SpecWords::tr("Shim table"), {}, in_depth([](const DepthSpec& depth) {
             return depth.bins ? SpecWords::tr("%1 ranges").arg(depth.bins->size()) : QString();
           }),
           from);
}

void add_float(SideRows& rows) {
  using sheet::FloatSpec;
  const OfSide from = in_float([](const FloatSpec& spec) { return qt(spec.source); });
  rows.add(SpecWords::tr("Float limits"), unit_mm(), in_float([](const FloatSpec& spec) {
             return SpecWords::tr("%1 to %2").arg(millimetres(spec.least), millimetres(spec.most));
           }),
           from);
  rows.add(SpecWords::tr("Float aimed at"), unit_mm(),
           in_float([](const FloatSpec& spec) { return spec.target ? millimetres(*spec.target) : QString(); }), from);
  rows.add(SpecWords::tr("Largest spread over the spots"), unit_mm(),
           in_float([](const FloatSpec& spec) { return millimetres(spec.max_spread); }), from);
  rows.add(SpecWords::tr("Spots, at angles of"), QStringLiteral("°"), in_float([](const FloatSpec& spec) {
             QStringList all;
             for (const double angle : spec.spot_angles_deg) {
               all << QString::number(angle, 'g', 6);
             }
             return all.join(QStringLiteral(", "));
           }),
           from);
  rows.add(SpecWords::tr("Runs at each spot, at least"), {},
           in_float([](const FloatSpec& spec) { return QString::number(spec.least_runs); }), from);
  rows.add(SpecWords::tr("Repeatability, standard uncertainty"), unit_mm(),
           in_float([](const FloatSpec& spec) { return decimals(spec.repeatability_mm, 3); }), from);
  rows.add(SpecWords::tr("Guard factor"), {},
           in_float([](const FloatSpec& spec) { return decimals(spec.guard_factor, 3); }), from);
  rows.add(SpecWords::tr("Float lost per mm of shim, and its standard deviation"), QStringLiteral("mm/mm"),
           in_float([](const FloatSpec& spec) {
             return spec.sensitivity ? SpecWords::tr("%1, %2").arg(decimals(spec.sensitivity->mean, 2),
                                                                   decimals(spec.sensitivity->sd, 2))
                                     : QString();
           }),
           in_float([](const FloatSpec& spec) { return spec.sensitivity ? qt(spec.sensitivity->source) : QString(); }));
  rows.add(SpecWords::tr("Float of other jobs, standard uncertainty"), unit_mm(),
           in_float([](const FloatSpec& spec) { return decimals(spec.history_u_mm, 3); }), from);
  rows.add(SpecWords::tr("Float as found can be measured"), {},
           in_float([](const FloatSpec& spec) { return yes_or_no(spec.as_found); }), from);
}

QString limits_in_words(const sheet::Limit& limit) {
  const auto digits = [&](std::int64_t base) {
    return widgets::number_text(quantity::digits_of({base, limit.decimals, limit.unit}));
  };
  if (limit.least && limit.most) {
    return SpecWords::tr("%1 to %2").arg(digits(*limit.least), digits(*limit.most));
  }
  if (limit.least) {
    return SpecWords::tr("at least %1").arg(digits(*limit.least));
  }
  return limit.most ? SpecWords::tr("at most %1").arg(digits(*limit.most)) : QString();
}

}  // namespace

QString millimetres(quantity::Length length) {
  std::string text = quantity::millimetre_text(length, 3);
  if (text.back() == '0') {
    text.pop_back();
  }
  return widgets::number_text(text);
}

std::vector<SideRow> side_rows(const sheet::SpecSheet& spec) {
  SideRows rows(spec);
  add_shim(rows);
  add_gauge_fit(rows);
  add_depth(rows);
  add_float(rows);
  return std::move(rows).rows();
}

std::vector<LimitRow> limit_rows(const sheet::SpecSheet& spec) {
  std::vector<LimitRow> rows;
  for (const auto& [key, limit] : spec.limits) {
    rows.push_back(
        {widgets::say(limit.title), limits_in_words(limit), qt(quantity::symbol_of(limit.unit)), qt(limit.source)});
  }
  return rows;
}

}  // namespace shimwright::workshop
