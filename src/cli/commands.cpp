#include "commands.h"

namespace shimwright::cli {

namespace {

std::vector<CommandEntry> bench_commands() {
  return {
      {"advise", "advise [FILE]",
       "Reads one case as JSON from FILE or standard input and prints the engine's answer as JSON.\n"
       "Refused: one line that begins with the JSON pointer of the fault, exit 2.",
       false, run_advise},
      {"reading", "reading TEXT",
       "Reads one typed length and prints {\"um\", \"decimals\", \"unit\"}.\n"
       "Refused: the code of the refusal on standard error, exit 2.",
       false, run_reading},
      {"vin", "vin TEXT",
       "Reads one vehicle number and prints what it says as JSON.\nRefused: the reason in the JSON, exit 2.", false,
       run_vin},
      {"replay", "replay SCRIPT --store FILE [--record OUT.pdf] [--paper a4|letter]",
       "Goes through a script of a job, command by command, into the store (made where there is none). Prints one "
       "JSON\n"
       "line per command once it is on the disk, and a last line with the job and its fold hash. With --record the "
       "record\n"
       "is printed to a PDF. Exit 1 where a command went another way than the script expects, or the disk refused; "
       "exit 2\n"
       "where the script is malformed: then the store was not touched.",
       true, run_replay},
      {"find", "find TEXT --store FILE",
       "Prints one JSON line per job whose VIN, plate, number, reference or serial holds TEXT; one wrong or two "
       "swapped\n"
       "characters are forgiven from four characters on.",
       false, run_find},
      {"record",
       "record JOB --store FILE [--pdf OUT [--photos]] [--json OUT] [--slip OUT] [--summary] [--paper a4|letter]",
       "Writes the record of a job (its number or id). --pdf as it is printed, --photos with the job's photos behind "
       "it,\n"
       "--json as canonical JSON, --slip a slip (A5) for who goes on with the job, --summary as plain sentences on\n"
       "standard output. An older record is written over, and nothing else.",
       true, run_record},
      {"check", "check --store FILE",
       "Checks the chain of every job, what is derived from the entries, the photos and the file itself. Prints each\n"
       "finding with its place on standard error and a JSON summary. Exit 1 where anything is off.",
       false, run_check},
      {"erase", "erase VIN --store FILE",
       "Erases plate, customer reference and complaint of every job of a vehicle, for good. The jobs and their numbers "
       "stay.\n"
       "Backups made before keep these texts until they are made anew or thrown away.",
       false, run_erase},
      {"make-demo", "make-demo --jobs N --store FILE [--seed S]",
       "Fills a new store with N invented jobs. The same seed gives the same jobs.", false, run_make_demo},
  };
}

std::vector<CommandEntry> data_commands() {
  return {
      {"backup", "backup OUT --store FILE",
       "Copies the store to OUT, photos beside it, checks the copy and only then gives it its name.", false,
       run_backup},
      {"rescue", "rescue --store FILE [--from FOLDER] [--put-back]",
       "Looks for the last whole backup of a damaged store in FOLDER (backups beside the store, where none is named)\n"
       "and tells what would be missing. With --put-back it takes the place of the damaged store, which is kept "
       "beside\n"
       "it; a store that is in order stays. Exit 1 where there is no whole backup.",
       false, run_rescue},
      {"restore", "restore BACKUP --store FILE [--look]",
       "Lays BACKUP in the place of a store that nobody has open; what is there is kept beside it first. Every entry "
       "is\n"
       "compared with the backup's, hash for hash. With --look it tells what the backup holds and what came after it,\n"
       "and changes nothing.",
       false, run_restore},
      {"export", "export JOB OUT --store FILE",
       "Writes a whole job (its number or id) to one file: entries, sheets, photos, seal. OUT is a file or a folder.",
       false, run_export},
      {"import", "import FILE --store FILE",
       "Takes a job into the store from such a file. The same file again changes nothing. Equal job numbers and other\n"
       "names of persons are told on standard error. What does not hold together is refused, and the store is as it "
       "was.",
       false, run_import},
  };
}

std::vector<CommandEntry> reading_commands() {
  return {
      {"vehicle", "vehicle VIN --store FILE [--csv OUT] [--json OUT]",
       "Prints one JSON line per job of a vehicle, the latest first, with odometer, shims and floats, and one for "
       "each\n"
       "pack whose wear can be told. With --csv and --json the measurements of these jobs are written to a file.",
       false, run_vehicle},
      {"measurements", "measurements --from DAY --to DAY --store FILE [--csv OUT] [--json OUT]",
       "Writes every measurement of the jobs opened from the first day to the last (as 2026-11-24, both with it) as "
       "CSV\n"
       "or canonical JSON. Plate and customer reference are in it unless they were erased, the complaint never is.",
       false, run_measurements},
      {"figures", "figures --from DAY --to DAY --store FILE [--within-km N] [--within-days N]",
       "Prints what the jobs opened in these days say of the workshop: jobs per month, shims, trials, second "
       "assemblies,\n"
       "and vehicles back within N km and N days of their job before.",
       false, run_figures},
  };
}

std::vector<CommandEntry> signing_commands() {
  return {
      {"pin", "pin --store FILE --person NAME [--change | --forgotten | --key | --end KEY --from DAY]",
       "Reads a PIN from standard input and gives the person a key under it; prints the public keys of the person as "
       "PEM.\n"
       "With --change the old PIN and the new one are read, one to a line. With --forgotten a new key takes the place\n"
       "of one nobody opens any more. With --end what KEY (64 hexadecimal digits, or a PEM file) signs from DAY on\n"
       "(as 2026-11-24) does not hold. With --key nothing is set.",
       false, run_pin},
      {"sign", "sign JOB --store FILE --person NAME [--folder DIR] [--pdf OUT]",
       "Seals a job that is at its end. Reads the PIN of the technician and, where the job was checked, of the "
       "checker\n"
       "from standard input, one to a line. Prints digest and seal; with --folder the signed file is written there,\n"
       "with --pdf the record is printed; later prints are reprints. Exit 1 where it is sealed and a file could not "
       "be\n"
       "written.",
       true, run_sign},
      {"addendum", "addendum JOB --store FILE --person NAME --reason TEXT --text TEXT [--folder DIR]",
       "Adds to a sealed job, signed with the PIN read from standard input.", false, run_addendum},
      {"verify", "verify FILE [--key PEM | --store FILE], or: verify --store FILE --job JOB | --code TEXT",
       "Prints one line: whole and ours, whole but by an unknown key, or changed and where. Exit 0 for the first, else "
       "1.",
       false, run_verify},
  };
}

std::vector<CommandEntry> all_commands() {
  std::vector<CommandEntry> all = bench_commands();
  for (const auto& more : {reading_commands(), data_commands(), signing_commands()}) {
    all.insert(all.end(), more.begin(), more.end());
  }
  return all;
}

}  // namespace

const std::vector<CommandEntry>& commands() {
  static const std::vector<CommandEntry> all = all_commands();
  return all;
}

}  // namespace shimwright::cli
