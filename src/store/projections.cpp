#include "projections.h"

#include <cmath>
#include <optional>
#include <utility>

namespace shimwright::store {

namespace {

enum Place : std::size_t {
  measurement,
  shim_trial,
  float_run,
  shim_chosen,
  advice,
  part_fitted,
  deviation,
  photo,
  withdrawal
};

std::optional<std::string> id_of(const std::optional<job::InstrumentUsed>& instrument) {
  return instrument ? std::optional(instrument->id) : std::nullopt;
}

/// Makes the rows of one entry.
class Projecting {
 public:
  Projecting(const std::string& job, std::int64_t seq) : job_(&job), seq_(seq) {}

  [[nodiscard]] std::vector<ProjectedRow> take() { return std::move(rows_); }

  void operator()(const job::Opened& body) {
    if (body.odometer) {
      number(nullptr, "odometer", *body.odometer);
    }
  }
  void operator()(const job::Read& body) {
    for (const job::Reading& each : body.readings) {
      reading(body.at, each, each.channel, std::nullopt);
    }
  }
  void operator()(const job::PeakRead& body) { reading(body.at, body.reading, body.reading.channel, body.attempt); }
  void operator()(const job::DepthsRead& body) {
    for (std::size_t place = 0; place < body.readings.size(); ++place) {
      number(&body.at, "depth-" + std::to_string(place + 1), body.readings[place], body.instrument);
    }
    number(&body.at, "reference", body.reference, body.instrument);
    if (body.stamp) {
      number(&body.at, "stamp", *body.stamp);
    }
  }
  void operator()(const job::TeachInTried& body) {
    for (const job::AttemptValue& each : body.values) {
      if (each.before) {
        reading(body.at, {each.channel, *each.before, job::ReadingVerdict::none, {}, {}}, each.channel + ".before",
                body.attempt);
      }
      if (each.after) {
        reading(body.at, *each.after, each.channel + ".after", body.attempt);
      }
    }
  }
  void operator()(const job::ShimTried& body) {
    add(shim_trial, body.at, {text_value(sheet::name_of(body.side)), body.shim, text_value(shim::name_of(body.fit))});
  }
  void operator()(const job::FloatRun& body) {
    const auto zero_after = body.zero_after ? std::optional(body.zero_after->base) : std::nullopt;
    add(float_run, body.at,
        {text_value(sheet::name_of(body.side)), flag_value(body.as_found), number_value(body.spot),
         number_value(body.series), number_value(body.rest.base), number_value(body.lifted.base),
         optional_value(zero_after), number_value(body.lifted.base - body.rest.base),
         text_value(quantity::symbol_of(body.lifted.unit)), optional_value(id_of(body.instrument))});
  }
  void operator()(const job::ShimChosen& body) {
    const auto chance = body.chance_percent ? std::optional<std::int64_t>(*body.chance_percent) : std::nullopt;
    add(shim_chosen, body.at,
        {text_value(sheet::name_of(body.side)), body.shim, number_value(body.thickness.count()),
         number_value(std::llround(body.u_mm * 1e6)), text_value(job::name_of(body.by)), optional_value(chance),
         body.reason});
  }
  void operator()(const job::Advised& body) {
    const auto agree = body.trials_agree ? std::optional<std::int64_t>(*body.trials_agree ? 1 : 0) : std::nullopt;
    add(advice, body.at,
        {text_value(sheet::name_of(body.side)), body.engine, text_value(job::name_of(body.conclusion)),
         optional_value(body.shim), optional_value(body.mean), optional_value(body.expanded_u), optional_value(agree)});
  }
  void operator()(const job::PartsFitted& body) {
    for (const job::PartFitted& each : body.parts) {
      Row values = {*job_, number_value(seq_), number_value(next_item())};
      append_step(values, body.at);
      values.insert(values.end(), {each.part, each.number, number_value(each.quantity), each.batch});
      rows_.push_back({&projection_tables()[part_fitted], std::move(values)});
    }
  }
  void operator()(const job::Deviated& body) { add(deviation, body.at, {body.reason}); }
  void operator()(const job::PhotoTaken& body) {
    add(photo, body.at, {body.sha256, body.media_type, number_value(body.bytes), body.caption});
  }
  void operator()(const job::Withdrawn& body) {
    rows_.push_back(
        {&projection_tables()[withdrawal], {*job_, number_value(seq_), number_value(body.entry), body.reason}});
  }
  template <class Body>
  void operator()(const Body& /*body*/) {}

 private:
  [[nodiscard]] std::int64_t next_item() const { return static_cast<std::int64_t>(rows_.size()) + 1; }

  static void append_step(Row& values, const job::StepRef& at) {
    values.emplace_back(at.step);
    values.push_back(number_value(at.assembly));
  }

  void add(Place table, const job::StepRef& at, const Row& rest) {
    Row values = {*job_, number_value(seq_)};
    append_step(values, at);
    values.insert(values.end(), rest.begin(), rest.end());
    rows_.push_back({&projection_tables()[table], std::move(values)});
  }

  void number(const job::StepRef* at, const std::string& channel, const quantity::TypedNumber& typed,
              const std::optional<job::InstrumentUsed>& instrument = std::nullopt) {
    measure(at, {channel, typed, job::ReadingVerdict::none, std::nullopt, instrument}, channel, std::nullopt);
  }
  void reading(const job::StepRef& at, const job::Reading& taken, const std::string& channel,
               std::optional<int> attempt) {
    measure(&at, taken, channel, attempt);
  }
  void measure(const job::StepRef* at, const job::Reading& taken, const std::string& channel,
               std::optional<int> attempt) {
    const auto least = taken.limit ? taken.limit->least : std::nullopt;
    const auto most = taken.limit ? taken.limit->most : std::nullopt;
    const auto counted = attempt ? std::optional<std::int64_t>(*attempt) : std::nullopt;
    Row values = {*job_, number_value(seq_), number_value(next_item())};
    values.push_back(at == nullptr ? Value() : Value(at->step));
    values.push_back(at == nullptr ? Value() : number_value(at->assembly));
    values.insert(values.end(), {channel, number_value(taken.number.base), number_value(taken.number.decimals),
                                 text_value(quantity::symbol_of(taken.number.unit)),
                                 text_value(job::name_of(taken.verdict)), optional_value(least), optional_value(most),
                                 optional_value(id_of(taken.instrument)), optional_value(counted)});
    rows_.push_back({&projection_tables()[measurement], std::move(values)});
  }

  const std::string* job_;
  std::int64_t seq_;
  std::vector<ProjectedRow> rows_;
};

std::string joined(const std::vector<std::string_view>& parts) {
  std::string text;
  for (const std::string_view part : parts) {
    text += text.empty() ? "" : ", ";
    text += part;
  }
  return text;
}

}  // namespace

const std::vector<ProjectionTable>& projection_tables() {
  static const std::vector<ProjectionTable> tables = {
      {"measurement",
       {"job", "seq", "item", "step", "assembly", "channel", "base", "decimals", "unit", "verdict", "limit_least",
        "limit_most", "instrument", "attempt"},
       "seq, item"},
      {"shim_trial", {"job", "seq", "step", "assembly", "side", "shim", "fit"}, "seq"},
      {"float_run",
       {"job", "seq", "step", "assembly", "side", "as_found", "spot", "series", "rest_um", "lifted_um", "zero_after_um",
        "float_um", "unit", "instrument"},
       "seq"},
      {"shim_chosen",
       {"job", "seq", "step", "assembly", "side", "shim", "thickness_um", "u_nm", "chosen_by", "chance_percent",
        "reason"},
       "seq"},
      {"advice",
       {"job", "seq", "step", "assembly", "side", "engine", "conclusion", "shim", "mean_um", "expanded_u_um",
        "trials_agree"},
       "seq"},
      {"part_fitted", {"job", "seq", "item", "step", "assembly", "part", "number", "quantity", "batch"}, "seq, item"},
      {"deviation", {"job", "seq", "step", "assembly", "reason"}, "seq"},
      {"photo", {"job", "seq", "step", "assembly", "sha256", "media_type", "bytes", "caption"}, "seq"},
      {"withdrawal", {"job", "seq", "entry", "reason"}, "seq"},
  };
  return tables;
}

std::vector<ProjectedRow> projected_rows(const std::string& job, const job::Entry& entry) {
  Projecting projecting(job, entry.seq);
  std::visit(projecting, entry.body);
  return projecting.take();
}

std::string insert_into(const ProjectionTable& table) {
  return "INSERT INTO " + std::string(table.name) + " (" + joined(table.columns) + ") VALUES (" +
         joined(std::vector<std::string_view>(table.columns.size(), "?")) + ")";
}

std::string select_from(const ProjectionTable& table) {
  return "SELECT " + joined(table.columns) + " FROM " + std::string(table.name) + " WHERE job = ? ORDER BY " +
         std::string(table.order);
}

}  // namespace shimwright::store
