#!/bin/sh
# Installs what the program is built with, builds it, and prints the demo day's mixing card.
# Usage, from anywhere: sh app/setup.sh
set -eu
top=$(CDPATH='' cd "$(dirname "$0")/.." && pwd)
build="$top/build"

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}
packages="g++ cmake ninja-build libboost-dev libcli11-dev libtomlplusplus-dev libfmt-dev
nlohmann-json3-dev"
# A package that another one only mentions is known to dpkg too: count those that are installed.
# shellcheck disable=SC2086
have=$(dpkg-query -W -f='${db:Status-Status}\n' $packages 2>/dev/null | grep -c '^installed$' || true)
# shellcheck disable=SC2086
if [ "$have" -ne "$(echo $packages | wc -w)" ]; then
  as_root apt-get update -qq >&2
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    $packages >&2
fi

cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release >&2
cmake --build "$build" >&2
exec "$build/app/whittaw" card "$top/recipes/demo/day.toml"
