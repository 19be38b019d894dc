# Makes one header of the library: cmake -P single_header.cmake <include dir> <output>
# Every <whittaw/...> include is replaced by its file where it first stands; other includes stay.

cmake_minimum_required(VERSION 3.25)

set(include_dir "${CMAKE_ARGV3}")
set(output "${CMAKE_ARGV4}")
if(output STREQUAL "")
  message(FATAL_ERROR "usage: cmake -P single_header.cmake <include dir> <output>")
endif()

set(mark "\n#include <whittaw/")
string(LENGTH "${mark}" mark_length)
set(seen "whittaw/whittaw.hpp")
file(READ "${include_dir}/whittaw/whittaw.hpp" rest)
string(PREPEND rest "\n")
set(text "")
while(TRUE)
  string(FIND "${rest}" "${mark}" at)
  if(at EQUAL -1)
    break()
  endif()
  string(SUBSTRING "${rest}" 0 ${at} before)
  string(APPEND text "${before}")
  math(EXPR at "${at} + ${mark_length}")
  string(SUBSTRING "${rest}" ${at} -1 rest)
  string(FIND "${rest}" ">" at)
  string(SUBSTRING "${rest}" 0 ${at} name)
  math(EXPR at "${at} + 1")
  string(SUBSTRING "${rest}" ${at} -1 rest)
  if(NOT "whittaw/${name}" IN_LIST seen)
    list(APPEND seen "whittaw/${name}")
    file(READ "${include_dir}/whittaw/${name}" inlined)
    # What is inlined may include others in its turn, and is read again from its start.
    string(PREPEND rest "\n// ---- whittaw/${name}\n${inlined}")
  endif()
endwhile()
string(APPEND text "${rest}")

string(REPLACE "\n#pragma once\n" "\n" text "${text}")
string(REGEX REPLACE "\n\n\n+" "\n\n" text "${text}")
string(PREPEND text "// Made from the headers of whittaw by single_header.cmake; change those, not this.\n"
                    "// Copyright (c) 2026 the whittaw authors. SPDX-License-Identifier: MIT\n#pragma once\n")
file(WRITE "${output}" "${text}")
