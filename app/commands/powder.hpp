// The verbs of the powder command.
#pragma once

#include "../book/book_file.hpp"
#include "../command_line/command_line.hpp"

namespace whittaw::app {

inline constexpr OptionRecord book_option{"--book", "FILE", "the powder book (powder.toml)"};
inline constexpr OptionRecord jar_option{"--jar", "NAME", "the jar"};
inline constexpr OptionRecord mass_option{"--mass", "MASS", "as weighed, damp and all"};
inline constexpr OptionRecord hides_option{"--hides", "TAG,TAG,...", "hides of the day (all)"};
inline constexpr OptionRecord day_option{"--day", "DAY.toml", "the day the powder is from or for"};
inline constexpr OptionRecord moisture_option{"--moisture", "SHARE",
                                              "by a sun or oven test (20 % for air-dry)"};
inline constexpr OptionRecord rounds_option{"--rounds", "N", "times it has been on a hide (1)"};
inline constexpr OptionRecord slipped_option{"--slipped", "", "from a hide that lost its wool"};
inline constexpr OptionRecord suspect_option{"--suspect", "", "from an animal under suspicion"};
inline constexpr OptionRecord kind_option{"--kind", "NAME",
                                          "potassium alum, ammonium alum or salt"};
inline constexpr OptionRecord note_option{"--note", "TEXT", "a word for the book"};
inline constexpr OptionRecord order_option{"--order", "oldest|strongest|least-left",
                                           "which jars cover takes first (oldest)"};

inline std::string book_path(const Arguments &arguments) {
  return arguments.value(book_option.name).value_or("powder.toml");
}

/// A day worked out, and the places of the hides that --hides names in it.
struct DayHides {
  Day day;
  Batch batch;
  std::vector<std::size_t> hides;
};
Outcome<DayHides> day_and_hides(const Arguments &arguments);

/// Writes an entry: save, use, top-up, sieve, throw-out, weigh, note, undo.
Outcome<Status> write_powder(const Arguments &arguments, std::string_view verb);
Outcome<Status> list_powder(const Arguments &arguments);
Outcome<Status> show_history(const Arguments &arguments);
Outcome<Status> show_cover(const Arguments &arguments);
Outcome<Status> print_journal(const Arguments &arguments);

} // namespace whittaw::app
