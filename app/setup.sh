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
# shellcheck disable=SC2086
if ! dpkg-query -W $packages >/dev/null 2>&1; then
  as_root apt-get update -qq >&2
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    $packages >&2
fi

cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release >&2
cmake --build "$build" >&2
exec "$build/app/whittaw" card "$top/recipes/demo/day.toml"
