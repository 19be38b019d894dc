// Where a number comes from. Each row of each table of constants carries one.
#pragma once

#include <string_view>

namespace whittaw {

enum class Mark {
  seen,       ///< read in the source's own text
  memory,     ///< from memory of the source, not yet checked against it
  practice,   ///< common practice of the trade, no source
  calculated, ///< worked out from sourced figures
  assumption, ///< an assumption of ours, wide spread, to be replaced by the workshop's own figures
  own,        ///< weighed or measured by the workshop itself
};

constexpr std::string_view mark_name(Mark mark) {
  switch (mark) {
  case Mark::seen: return "seen";
  case Mark::memory: return "from memory";
  case Mark::practice: return "common practice";
  case Mark::calculated: return "calculated";
  case Mark::assumption: return "assumption";
  case Mark::own: return "own weighing";
  }
  return "";
}

struct Source {
  std::string_view text;
  Mark mark = Mark::assumption;
};

} // namespace whittaw
