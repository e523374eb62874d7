#include <algorithm>
#include <utility>

#include "fields.h"
#include "file_header.h"
#include "measures.h"
#include "shimwright/sheet/names.h"
#include "shimwright/sheet/spec_sheet.h"
#include "side_spec_reader.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_parts = 100;
constexpr std::int64_t most_pieces = 1000;
constexpr std::int64_t highest_issue = 1'000'000;

Result<Limit> read_limit(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"title", "unit", "source"}, {"least", "most"});
  Limit limit;
  limit.title = fields.text("title");
  limit.unit = read_unit(fields, "unit");
  if (fields.has("least")) {
    const auto number = read_measure(fields, "least", limit.unit);
    limit.least = number.base;
    limit.decimals = number.decimals;
  }
  if (fields.has("most")) {
    const auto number = read_measure(fields, "most", limit.unit);
    limit.most = number.base;
    limit.decimals = std::max(limit.decimals, number.decimals);
  }
  limit.source = fields.line("source");
  if (fields.sound() && !limit.least && !limit.most) {
    fields.refuse("missing_field", "most",
                  SHIMWRIGHT_TEXT("sheet", "A limit needs 'least' or 'most' or both; add what holds."));
  }
  if (limit.least && limit.most && *limit.least > *limit.most) {
    fields.refuse("limits_order", "most",
                  SHIMWRIGHT_TEXT("sheet", "The upper limit has to be at least the lower one; correct the two."));
  }
  return fields.finish(std::move(limit));
}

Result<WorkValue> read_work_value(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"title", "value", "source"});
  WorkValue work;
  work.title = fields.text("title");
  work.value = fields.line("value");
  work.source = fields.line("source");
  return fields.finish(std::move(work));
}

Result<PartItem> read_part(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"id", "title", "number", "quantity", "one_time"});
  PartItem part;
  part.id = fields.id("id");
  part.title = fields.text("title");
  part.number = fields.line("number");
  part.quantity = fields.integer("quantity", 1, most_pieces);
  part.one_time = fields.flag("one_time");
  return fields.finish(std::move(part));
}

void check_key(Fields& sheet, const std::string& key, const std::string& place, bool repeated) {
  if (!is_key(key)) {
    sheet.refuse_at(
        "wrong_id", place,
        SHIMWRIGHT_TEXT("sheet", "'{0}' cannot be a name here; use 1 to 40 small letters, digits and underscores."),
        {key});
  }
  if (repeated) {
    sheet.refuse_at("repeated_field", place,
                    SHIMWRIGHT_TEXT("sheet", "The name '{0}' stands here twice; remove one of the two."), {key});
  }
}

template <class Entry>
std::map<std::string, Entry> read_entries(Fields& sheet, std::string_view section,
                                          Result<Entry> (*read_entry)(const json::Value&, const std::string&)) {
  std::map<std::string, Entry> entries;
  const json::Value* value = sheet.member(section);
  const json::Object* members = value == nullptr ? nullptr : value->object();
  if (members == nullptr) {
    sheet.refuse("wrong_type", section, SHIMWRIGHT_TEXT("sheet", "An object in braces { } has to stand here."));
    return entries;
  }
  for (const auto& [key, entry] : *members) {
    const std::string place = json::pointer(sheet.place_of(section), key);
    check_key(sheet, key, place, entries.count(key) > 0);
    entries.emplace(key, sheet.take(read_entry(entry, place)));
  }
  return entries;
}

void refuse_repeated_parts(Fields& sheet, const std::vector<PartItem>& parts) {
  for (auto part = parts.begin(); part != parts.end(); ++part) {
    if (std::any_of(parts.begin(), part, [part](const PartItem& each) { return each.id == part->id; })) {
      const auto index = static_cast<std::size_t>(part - parts.begin());
      sheet.refuse_at(
          "repeated_id", json::pointer(json::pointer(sheet.place_of("parts"), index), "id"),
          SHIMWRIGHT_TEXT("sheet", "The name '{0}' stands in this list twice; give one of the two another name."),
          {part->id});
    }
  }
}

SideSpec read_side(Fields& sheet, std::string_view name) {
  const json::Value* section = sheet.member(name);
  return section == nullptr ? SideSpec() : sheet.take(read_side_spec(*section, sheet.place_of(name)));
}

Result<SpecSheet> read_content(const json::Value& file) {
  Fields fields = Fields::open(file, "",
                               {"format", "version", "min_reader", "id", "gearbox", "issue", "demonstration", "title",
                                "source", "limits", "work_values", "parts", "lower", "upper"});
  read_header(fields);
  SpecSheet sheet;
  sheet.id = fields.uuid("id");
  sheet.gearbox = fields.line("gearbox");
  sheet.issue = fields.integer("issue", 1, highest_issue);
  sheet.demonstration = fields.flag("demonstration");
  sheet.title = fields.text("title");
  sheet.source = fields.line("source");
  sheet.limits = read_entries(fields, "limits", read_limit);
  sheet.work_values = read_entries(fields, "work_values", read_work_value);
  sheet.parts = fields.list("parts", 0, most_parts, read_part);
  refuse_repeated_parts(fields, sheet.parts);
  sheet.lower = read_side(fields, "lower");
  sheet.upper = read_side(fields, "upper");
  return fields.finish(std::move(sheet));
}

}  // namespace

Result<SpecSheet> read_spec_sheet(std::string_view json_text) {
  const auto file = json::parse(json_text);
  if (!file) {
    return tl::make_unexpected(file.error());
  }
  if (auto header = check_header(*file, "shimwright.spec-sheet"); !header) {
    return tl::make_unexpected(std::move(header.error()));
  }
  return read_content(*file);
}

}  // namespace shimwright::sheet
