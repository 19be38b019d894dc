// A sheet as data: what every writer renders. No layout, no markup.
#pragma once

#include <whittaw/paste/checks.hpp>

#include <string>
#include <vector>

namespace whittaw::app {

/// One thing to weigh: the weight stands first, the measure beside it.
struct SheetAmount {
  std::string name;
  std::string weight;
  std::string measure;   ///< scoops, or a volume; may be empty
  std::string note = {}; ///< what it stands for, where it is not the recipe's own form
};

/// One step, with a box to tick.
struct SheetStep {
  std::string text;
  std::vector<SheetAmount> amounts;
};

struct SheetTable {
  std::string title;
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;
  std::string note = {};
  bool compact = false; ///< may be set as a run of short lines to save room
};

struct SheetFinding {
  Level level = Level::ok;
  std::string text;
};

struct Sheet {
  std::string title;
  std::string subtitle;
  std::vector<SheetFinding> findings; ///< worst first
  std::vector<std::string> cautions;
  std::vector<SheetStep> steps;
  std::vector<SheetTable> tables;
  std::vector<std::string> remarks;
  std::vector<std::string> sources;
};

} // namespace whittaw::app
