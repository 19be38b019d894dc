#!/bin/sh
# Installs what the tests need, builds with g++ and with clang++ and its sanitizers, checks form,
# runs all tests, and ends with a line "N passed, N failed".
# Usage, from anywhere: sh tests/run.sh
set -eu
top=$(CDPATH='' cd "$(dirname "$0")/.." && pwd)
build="$top/build-tests"
jobs=$(nproc)
passed=0
failed=0

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}
packages="g++ clang libclang-rt-14-dev clang-format clang-tidy cmake ninja-build git python3 libboost-dev libcli11-dev
libtomlplusplus-dev doctest-dev libfmt-dev nlohmann-json3-dev libbenchmark-dev units chemeq openbabel
chromium poppler-utils fonts-dejavu-core ledger faketime"
# A package that another one only mentions is known to dpkg too: count those that are installed.
# shellcheck disable=SC2086
have=$(dpkg-query -W -f='${db:Status-Status}\n' $packages 2>/dev/null | grep -c '^installed$' || true)
# shellcheck disable=SC2086
if [ "$have" -ne "$(echo $packages | wc -w)" ]; then
  as_root apt-get update -qq
  # shellcheck disable=SC2086
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $packages
fi

# One check that is not a ctest test: a name and a command.
check() {
  name=$1
  shift
  if "$@" >"$build/check.log" 2>&1; then
    echo "ok: $name"
    passed=$((passed + 1))
  else
    echo "FAILED: $name"
    tail -n 40 "$build/check.log"
    failed=$((failed + 1))
  fi
}

# All tests of a build folder; ctest's own count goes into ours.
run_ctest() {
  name=$1
  folder=$2
  shift 2
  echo "== tests, $name"
  ctest --test-dir "$folder" --output-on-failure -j "$jobs" "$@" >"$build/ctest.log" 2>&1 || true
  summary=$(grep -E 'tests passed, [0-9]+ tests failed out of [0-9]+' "$build/ctest.log" || true)
  if [ -z "$summary" ]; then
    echo "FAILED: no tests ran in $name"
    tail -n 40 "$build/ctest.log"
    failed=$((failed + 1))
    return
  fi
  bad=$(echo "$summary" | sed -E 's/.* ([0-9]+) tests failed out of.*/\1/')
  all=$(echo "$summary" | sed -E 's/.*out of ([0-9]+).*/\1/')
  [ "$bad" -eq 0 ] || grep -vE ' Passed +[0-9.]+ sec|^ +Start ' "$build/ctest.log" | tail -n 200
  echo "$summary"
  # A case that this machine does not allow (no tmpfs, no other user) is neither.
  skipped=$(grep -c '(Skipped)$' "$build/ctest.log" || true)
  [ "$skipped" -eq 0 ] || grep '(Skipped)$' "$build/ctest.log"
  passed=$((passed + all - bad - skipped))
  failed=$((failed + bad))
}

configure_and_build() {
  folder=$1
  shift
  cmake -S "$top" -B "$folder" -G Ninja -DWHITTAW_BUILD_TESTS=ON "$@" && cmake --build "$folder"
}

mkdir -p "$build"
sources() {
  find "$top/lib" "$top/app" "$top/tests" -name '*.cpp' -o -name '*.hpp'
}
check_format() { sources | xargs clang-format --dry-run -Werror; }
check "clang-format" check_format
check "build with g++" configure_and_build "$build/gcc" -DCMAKE_CXX_COMPILER=g++ \
  -DCMAKE_BUILD_TYPE=Release -DWHITTAW_BUILD_BENCH=ON
run_ctest "g++" "$build/gcc"
check "each header compiles alone" cmake --build "$build/gcc" --target all_verify_interface_header_sets
check "bench gives the same figures with units and with doubles" \
  "$build/gcc/tests/bench/batch_bench" --benchmark_min_time=0.01
check "build with clang++, address and undefined-behaviour sanitizers" configure_and_build \
  "$build/clang" -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=RelWithDebInfo \
  "-DCMAKE_CXX_FLAGS=-fsanitize=address,undefined -fno-sanitize-recover=all"
run_ctest "clang++ with sanitizers" "$build/clang"
check_tidy() {
  find "$top/app" -name '*.cpp' -print0 |
    xargs -0 -P "$jobs" -n 4 clang-tidy --quiet -p "$build/clang"
}
check "clang-tidy" check_tidy

echo
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
