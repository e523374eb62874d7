#include "draft_values.h"

#include "sheet_files.h"

namespace shimwright::sheet::test {

namespace {

std::string value_for(const DraftField& field) {
  const auto ends = [&field](const std::string& end) {
    return field.place.size() >= end.size() &&
           field.place.compare(field.place.size() - end.size(), end.size(), end) == 0;
  };
  if (ends("/least_mm")) {
    return "0.25";
  }
  if (ends("/most_mm")) {
    return "0,85";
  }
  switch (field.kind) {
    case FieldKind::length:
    case FieldKind::decimal:
      return "0.05";
    case FieldKind::measure:
      return ends("/most") ? "12" : "";
    case FieldKind::count:
      return "2";
    case FieldKind::yes_no:
      return "yes";
    default:
      return "K9";
  }
}

}  // namespace

SheetDraft shipped_draft(SheetKind kind) {
  return {kind, shipped_file(kind == SheetKind::spec_sheet ? "specs/D7-2.json" : "sheets/dry-pack-renewal.json")};
}

SheetDraft filled_spec() {
  SheetDraft draft = empty_spec_sheet(draft_id, default_job_sheet());
  for (const Side side : {Side::lower, Side::upper}) {
    draft = *with_shims(draft, side, "1.30", "2.15", "0.05", "0.003");
  }
  for (const DraftField& field : fields_of(draft)) {
    if (field.text.empty() && field.kind != FieldKind::word &&
        (!field.may_be_blank || field.kind == FieldKind::measure)) {
      draft = *with_text(draft, field.place, value_for(field));
    }
  }
  return draft;
}

std::vector<DraftField> fields_of(const SheetDraft& draft) {
  std::vector<DraftField> fields;
  for (const DraftSection& section : sections_of(draft)) {
    for (const DraftGroup& group : section.groups) {
      fields.insert(fields.end(), group.fields.begin(), group.fields.end());
    }
  }
  return fields;
}

std::string field_text(const SheetDraft& draft, const std::string& place) {
  for (const DraftField& field : fields_of(draft)) {
    if (field.place == place) {
      return field.text;
    }
  }
  return "";
}

}  // namespace shimwright::sheet::test
