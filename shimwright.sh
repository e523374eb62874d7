#!/usr/bin/env bash
# Sets up, builds, runs and tests Shimwright on Debian 12. See ./shimwright.sh --help.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")" || exit 1

readonly BUILD_PACKAGES=(
  g++ cmake ninja-build ccache pkg-config python3 tzdata
  qt6-base-dev libqt6sql6-sqlite qt6-tools-dev qt6-l10n-tools fonts-open-sans libfontconfig-dev
  nlohmann-json3-dev libfmt-dev libexpected-dev libsodium-dev libsqlite3-dev libqrcodegencpp-dev
  catch2 librapidcheck-dev
)
readonly TEST_PACKAGES=(git xvfb poppler-utils python3-jsonschema dpkg-dev file desktop-file-utils appstream zbar-tools clang-14 libclang-rt-14-dev clang-tidy-16)
readonly LONG_PACKAGES=(gcovr clazy)

readonly LOGS=build/logs
readonly TIDY=clang-tidy-16
readonly TIDY_SECONDS=240
# Ten million executions, but of those that read files at most six hours each.
readonly LONG_FUZZ_SECONDS=21600
# What a stage may take on the disk, in kilobytes.
readonly ROOM_FOR_A_STAGE=$((4 * 1024 * 1024))
JOBS=$(nproc)

usage() {
  cat <<'END'
Usage: ./shimwright.sh run             set up, build, and go through the demonstration job
       ./shimwright.sh test            set up, build, and pass every test a change has to pass
       ./shimwright.sh test --long     the same, then all that takes longer: all sources under clang-tidy and clazy,
                                       coverage, ten million executions of each fuzzer (six hours at most each), long
                                       runs of the kill tests, an hour of the restless user
       ./shimwright.sh --help          this text

Packages come from Debian 12 and are installed when they are missing; that needs root or sudo. Nothing else is
downloaded. What is built lies in build/, what each stage said in build/logs/.
END
}

say() { printf '%s\n' "$*"; }
complain() { printf '%s\n' "$*" >&2; }

# ---- packages ------------------------------------------------------------------------------------------------------

is_debian() { command -v apt-get >/dev/null && command -v dpkg-query >/dev/null; }

missing_of() {
  local package
  for package in "$@"; do
    [[ $(dpkg-query --show --showformat='${db:Status-Status}' "$package" 2>/dev/null) == installed ]] ||
      printf '%s\n' "$package"
  done
}

install_packages() {
  if ! is_debian; then
    say "packages: this is not Debian, so nothing is installed here. Needed, by their Debian names: $*"
    return 0
  fi
  local missing
  mapfile -t missing < <(missing_of "$@")
  if ((${#missing[@]} == 0)); then
    say "packages: all there"
    return 0
  fi
  local as_root=()
  if ((EUID != 0)); then
    if ! command -v sudo >/dev/null; then
      complain "packages: missing, and neither root nor sudo is at hand. Ask for: apt-get install ${missing[*]}"
      return 1
    fi
    as_root=(sudo)
  fi
  say "packages: installing ${missing[*]}"
  if ! "${as_root[@]}" apt-get update -qq >"$LOGS/packages.log" 2>&1 ||
    ! "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
      apt-get install -y -qq --no-install-recommends "${missing[@]}" >>"$LOGS/packages.log" 2>&1; then
    tail -n 15 "$LOGS/packages.log" >&2
    complain "packages: could not be installed. Is there a network, and is this Debian 12? See $LOGS/packages.log."
    return 1
  fi
}

# ---- stages --------------------------------------------------------------------------------------------------------

RESULTS=()
FAILED=0

room_left() { df --output=avail -k build | tail -n 1; }

# A build whose tests are over goes again where the next stage might not find room.
make_room() {
  if (($(room_left) < ROOM_FOR_A_STAGE)); then
    rm -rf "build/$1"
    say "room: less than 4 GB were left on this disk, so build/$1 is gone again"
  fi
}

# `stage NAME COMMAND …`: one line when it is over, what it said in its log; a failure shows the end of the log.
stage() {
  local name=$1 log="$LOGS/${1// /-}.log" start=$SECONDS result=ok
  shift
  if ! "$@" >"$log" 2>&1 </dev/null; then
    result=FAILED
    FAILED=1
    tail -n 60 "$log"
    (($(room_left) > ROOM_FOR_A_STAGE / 8)) ||
      complain "$name: the disk of build/ is full. A whole run takes about 8 GB; make room and run it again."
  fi
  local line
  printf -v line '%-6s  %-28s %4d s' "$result" "$name" $((SECONDS - start))
  RESULTS+=("$line")
  say "$line"
  [[ $result == ok ]]
}

left_out() {
  RESULTS+=("$(printf '%-6s  %-28s %s' none "$1" "$2")")
  say "${RESULTS[-1]}"
}

has_preset() { grep -q "\"name\": \"$1\"" CMakePresets.json; }
build_with() { cmake --preset "$1" -Wno-dev && cmake --build --preset "$1" -j "$JOBS" "${@:2}" -- -k 0; }
tests_of() { ctest --preset "$1" -j "$JOBS" "${@:2}"; }
build_and_test() { stage "$1 build" build_with "$1" && stage "$1 tests" tests_of "$1"; }

# ---- clang-tidy ----------------------------------------------------------------------------------------------------

# What this change touches: since the branch left the shared one, else the last commit, else all there is.
changed_files() {
  local base
  base=$(git merge-base HEAD '@{upstream}' 2>/dev/null)
  if [[ -z $base || $base == $(git rev-parse HEAD) ]]; then
    base=$(git rev-parse --verify --quiet HEAD~1) || base=$(git hash-object -t tree /dev/null)
  fi
  git diff --name-only --diff-filter=d "$base"
  git ls-files --others --exclude-standard
}

tidy_sources() {
  if [[ $1 == all ]] || ! git rev-parse --git-dir >/dev/null 2>&1; then
    find src ui -name '*.cpp'
  else
    changed_files
  fi | sed -n -E '/^(src|ui)\/.*\.cpp$/p' | sort -u # unlike grep no failure where a change touches no source
}

tidy_one() {
  if ((SECONDS_LIMIT > 0 && $(date +%s) > SECONDS_LIMIT)); then
    printf 'not looked at for lack of time: %s\n' "$1"
  else
    "$TIDY" -p build/tidy --quiet "$1"
  fi
}

# `tidy changed 300` or `tidy all 0`: the second is how many seconds it may take, 0 for as long as it takes.
tidy() {
  # Only the headers that are generated are built, and those without looking at them.
  cmake --preset tidy -Wno-dev -DCMAKE_CXX_CLANG_TIDY= &&
    cmake --build --preset tidy -j "$JOBS" --target autogen || return 1
  SECONDS_LIMIT=$(($2 == 0 ? 0 : $(date +%s) + $2))
  export -f tidy_one
  export TIDY SECONDS_LIMIT
  # shellcheck disable=SC2016 # expanded by the inner shell
  tidy_sources "$1" | xargs --no-run-if-empty -P "$JOBS" -I{} bash -c 'tidy_one "$1"' tidy_one {}
}

clazy() {
  tidy_sources all | grep -E '^(src/(store|print|cli)|ui)/' |
    xargs --no-run-if-empty -P "$JOBS" -n 4 clazy-standalone -p build/tidy --checks=level1,no-qstring-ref 2>&1 | tee "$LOGS/clazy.txt"
  ! grep -qE '^[^ ]*(src|ui)/.*(warning|error):' "$LOGS/clazy.txt"
}

# ---- fuzzing, coverage ---------------------------------------------------------------------------------------------

fuzz_one() {
  local fuzzer=$1 name
  name=$(basename "$fuzzer" _fuzz)
  mkdir -p "build/fuzz/found/$name"
  # Stores are made by the thousand: in memory, where there is room.
  [[ -w /dev/shm ]] && export TMPDIR=/dev/shm
  "$fuzzer" -max_total_time="$FUZZ_SECONDS" -runs="$FUZZ_RUNS" -timeout=60 \
    -artifact_prefix="build/fuzz/found/$name-" "build/fuzz/found/$name" "tests/fuzz/seeds/$name"
}

# `fuzz 30 -1`: each fuzzer for that many seconds at most, and for so many executions (-1: as many as it can), from its
# seeds and what earlier runs found worth keeping.
fuzz() {
  export FUZZ_SECONDS=$1 FUZZ_RUNS=$2
  export -f fuzz_one
  build_with fuzz || return 1
  # shellcheck disable=SC2016 # expanded by the inner shell
  find build/fuzz/bin -name '*_fuzz' -type f | sort |
    xargs -P "$JOBS" -I{} bash -c 'fuzz_one "$1"' fuzz_one {}
}

coverage() {
  build_with coverage && tests_of coverage &&
    gcovr --root . --filter src/ --filter ui/ --exclude-throw-branches --print-summary build/coverage
}

# ---- the two commands ----------------------------------------------------------------------------------------------

run_tests() {
  local long=$1
  local packages=("${BUILD_PACKAGES[@]}" "${TEST_PACKAGES[@]}")
  ((long)) && packages+=("${LONG_PACKAGES[@]}")
  install_packages "${packages[@]}" || return 1

  build_and_test release
  build_and_test sanitize
  ((long)) || make_room sanitize
  build_and_test core
  make_room core
  stage "tidy of what changed" tidy changed "$TIDY_SECONDS"
  if has_preset fuzz; then stage "fuzz" fuzz 30 -1; else left_out "fuzz" "no such preset"; fi
  if ((long)); then
    stage "tidy of everything" tidy all 0
    stage "clazy" clazy
    stage "coverage" coverage && grep -E '^(lines|branches):' "$LOGS/coverage.log"
    if has_preset fuzz; then stage "long fuzz" fuzz "$LONG_FUZZ_SECONDS" 10000000; fi
    stage "long kills" env SHIMWRIGHT_LONG=1 ctest --preset release -R '[Kk]ill'
    stage "long faults of the disk" env SHIMWRIGHT_LONG=1 ctest --preset release -L store_faults
    stage "long shapes of drafts" env SHIMWRIGHT_LONG=1 ctest --preset release -L sheet
    stage "long restless user" env SHIMWRIGHT_LONG=1 ctest --preset sanitize -R 'restless'
  fi

  say "" "Stages:"
  printf '  %s\n' "${RESULTS[@]}"
  say ""
  # The last word has the whole suite as it is shipped.
  sed -n '/tests passed/,$p' "$LOGS/release-tests.log" 2>/dev/null || complain "The release suite was not run."
  return "$FAILED"
}

has_display() { [[ -n ${DISPLAY:-} || -n ${WAYLAND_DISPLAY:-} ]]; }

demo_script() { find data/demo -name '02-*.json*' | sort | head -n 1; }

# The job the replay ended with, from its last line.
job_of() { python3 -c 'import json, sys; print(json.loads(sys.stdin.read().splitlines()[-1])["job"])'; }

replay_demo() {
  local cli=build/release/bin/shimwright-cli folder=$1 script job
  script=$(demo_script)
  say "Going through $script"
  "$cli" replay "$script" --store "$folder/workshop.shimwright" --record "$folder/record.pdf" >"$LOGS/demo.log" || {
    tail -n 5 "$LOGS/demo.log" >&2
    complain "The demonstration job could not be gone through. See $LOGS/demo.log."
    return 1
  }
  job=$(job_of <"$LOGS/demo.log") && "$cli" record "$job" --store "$folder/workshop.shimwright" --summary
  say "" "The record:   $folder/record.pdf" "The workshop: $folder/workshop.shimwright"
}

run_demo() {
  install_packages "${BUILD_PACKAGES[@]}" && stage "release build" build_with release --target programs || return 1
  local home=${XDG_DATA_HOME:-$HOME/.local/share}/shimwright-demo folder
  # A folder of its own each time: the demonstration never writes over a store.
  mkdir -p "$home" && folder=$(mktemp -d "$home/$(date +%Y-%m-%d)-XXXXXX") || return 1
  if has_display && [[ -x build/release/bin/shimwright ]]; then
    replay_demo "$folder" && build/release/bin/shimwright --demo
  else
    replay_demo "$folder"
  fi
}

main() {
  case "${1:-}" in
    run | test) mkdir -p "$LOGS" ;;
    --help | -h | help) usage && exit 0 ;;
    *) usage >&2 && exit 2 ;;
  esac
  case "$*" in
    run) run_demo ;;
    test) run_tests 0 ;;
    "test --long") run_tests 1 ;;
    *) usage >&2 && exit 2 ;;
  esac
}

main "$@"
