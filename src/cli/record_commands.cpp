#include <QFileInfo>
#include <QSaveFile>
#include <QString>
#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "outputs.h"
#include "replay.h"
#include "script_checks.h"
#include "sheets.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/print/pdf.h"
#include "shimwright/print/pictures.h"
#include "shimwright/record/record_json.h"
#include "shimwright/record/summary.h"
#include "shimwright/store/job_record.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

using nlohmann::ordered_json;

Result<record::PaperSize> paper_of(const Arguments& arguments) {
  const auto found = arguments.options.find("paper");
  if (found == arguments.options.end() || found->second == "a4") {
    return record::PaperSize::a4;
  }
  if (found->second == "letter") {
    return record::PaperSize::letter;
  }
  return refuse("unknown_name", "--paper", SHIMWRIGHT_TEXT("cli", "“{0}” is no paper size here: write a4 or letter."),
                {found->second});
}

Result<void> write_file(const std::string& path, const std::string& bytes) {
  QSaveFile file(QString::fromStdString(path));
  const bool written = file.open(QIODevice::WriteOnly) &&
                       file.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size());
  if (!written || !file.commit()) {
    return refuse("cannot_write", path,
                  SHIMWRIGHT_TEXT("cli", "This file cannot be written: look at the folder and the space on the disk."));
  }
  return {};
}

Result<void> write_slip(store::Store& store, const std::string& job, const std::string& path) {
  const auto fonts = print::load_fonts();
  if (!fonts) {
    return tl::make_unexpected(fonts.error());
  }
  const auto slip = store::shift_slip_of(store, job);
  if (!slip) {
    return tl::make_unexpected(slip.error());
  }
  auto pages = record::lay_out_shift_slip(*slip, print::FontMeasure(*fonts));
  return print::write_pdf({"Next shift, job " + slip->number, std::move(pages)}, path, record::PaperSize::a5, *fonts);
}

void sealed_in_this_go(record::Record& record) {
  if (auto& seal = record.seal) {
    seal->reprint = false;
  }
}

Result<Script> good_script(const std::string& path, const std::string& folder) {
  auto text = read_file(path);
  auto script = text ? read_script(*text) : tl::make_unexpected(text.error());
  if (!script) {
    return script;
  }
  auto sheet = shipped_job_sheet(script->sheet).and_then(sheet::read_job_sheet);
  if (!sheet) {
    return tl::make_unexpected(sheet.error());
  }
  auto spec = shipped_spec_sheet(script->spec).and_then(sheet::read_spec_sheet);
  if (!spec) {
    return tl::make_unexpected(spec.error());
  }
  auto good = check_against(*script, *sheet, *spec, folder);
  good = good ? could_settle(*script) : good;
  return good ? script : tl::make_unexpected(good.error());
}

/// Said at the end, when all that was asked for is written.
Exit seal_holds(const record::Record& record) {
  if (const auto& seal = record.seal; seal && seal->check.standing != record::SealStanding::holds) {
    return failed(Error{std::string(record::name_of(seal->check.standing)), seal->check.place, seal->check.why});
  }
  return Exit::done;
}

}  // namespace

Exit run_record(const std::vector<std::string>& words) {
  auto arguments =
      read_arguments(words, {1, 1, {"store", "pdf", "json", "paper", "slip"}, {"store"}, {"summary", "photos"}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto paper = paper_of(*arguments);
  if (!paper) {
    return refused(paper.error());
  }
  if (auto free = check_outputs(*arguments); !free) {
    return refused(free.error());
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    return refused(store.error());
  }
  auto job = job_named(**store, arguments->positional.front());
  if (!job) {
    return refused(job.error());
  }
  auto record = store::record_of(**store, *job);
  if (!record) {
    return refused(record.error());
  }
  for (const std::string& sentence :
       arguments->flags.count("summary") != 0 ? record::summary(*record) : std::vector<std::string>{}) {
    say(sentence);
  }
  if (const auto pdf = arguments->options.find("pdf"); pdf != arguments->options.end()) {
    if (arguments->flags.count("photos") != 0) {
      record->with_photos = true;
      record->pictures = print::pictures_for_paper(
          *record, [&store](const std::string& sha256) { return (*store)->photo_path(sha256); });
    }
    if (auto written = print::write_pdf(*record, absolute(pdf->second), *paper); !written) {
      return failed(written.error());
    }
  }
  if (const auto slip = arguments->options.find("slip"); slip != arguments->options.end()) {
    if (auto written = write_slip(**store, *job, absolute(slip->second)); !written) {
      return failed(written.error());
    }
  }
  if (const auto out = arguments->options.find("json"); out != arguments->options.end()) {
    if (auto written = write_file(absolute(out->second), record::record_json(*record)); !written) {
      return failed(written.error());
    }
  }
  return seal_holds(*record);
}

Exit run_replay(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store", "record", "paper"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto paper = paper_of(*arguments);
  if (!paper) {
    return refused(paper.error());
  }
  if (auto free = check_outputs(*arguments); !free) {
    return refused(free.error());
  }
  const std::string& path = arguments->positional.front();
  const std::string folder = QFileInfo(QString::fromStdString(path)).absolutePath().toStdString();
  // All of the script is known to be good before the store is touched.
  auto script = good_script(path, folder);
  if (!script) {
    return refused(script.error());
  }
  auto store = open_to_write(arguments->options.at("store"), script->people.empty() ? "" : script->people.front().name);
  if (!store) {
    return refused(store.error());
  }
  store::IdSource ids;
  auto known = settle_in(**store, *script, ids);
  if (!known) {
    return refused(known.error());
  }
  auto result = replay(**store, *script, *known, ids, folder, [](const std::string& line) { say(line); });
  if (!result) {
    return failed(result.error());
  }
  ordered_json last{{"job", result->job},
                    {"entries", result->entries},
                    {"fold_hash", result->fold_hash},
                    {"unexpected", result->unexpected}};
  if (const auto out = arguments->options.find("record"); out != arguments->options.end() && !result->job.empty()) {
    auto record = store::record_of(**store, result->job);
    if (record) {
      sealed_in_this_go(*record);
    }
    auto written =
        record ? print::write_pdf(*record, absolute(out->second), *paper) : tl::make_unexpected(record.error());
    if (!written) {
      return failed(written.error());
    }
    last["record"] = absolute(out->second);
  }
  say(last.dump());
  return result->unexpected == 0 ? Exit::done : Exit::off;
}

}  // namespace shimwright::cli
