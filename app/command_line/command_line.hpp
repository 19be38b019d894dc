// Commands and options: one record each, from which parsing, help and hints are made.
#pragma once

#include "../fault.hpp"

#include <whittaw/quantity/write.hpp>

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace whittaw::app {

struct OptionRecord {
  std::string_view name;  ///< "--units"
  std::string_view value; ///< what it takes, as help shows it; empty for a flag
  std::string_view help;
};

/// What was given on the command line to one command.
struct Arguments {
  std::vector<std::string> operands;
  std::map<std::string, std::string, std::less<>> values; ///< by option name; flags hold ""

  [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
  [[nodiscard]] bool has(std::string_view option) const;
};

struct CommandRecord {
  std::string_view name;
  std::string_view operands; ///< as usage shows them
  std::size_t least_operands = 0;
  std::size_t most_operands = 0;
  std::string_view summary;
  std::vector<OptionRecord> options;
  std::string_view example;
  Outcome<Status> (*run)(const Arguments &) = nullptr;
};

std::span<const CommandRecord> commands();

/// Reads the arguments after the command's name. Faults: an unknown option (with the nearest), a
/// missing value, too few or too many operands.
Outcome<Arguments> parse_arguments(const CommandRecord &command,
                                   const std::vector<std::string> &arguments);

std::string general_help();
std::string command_help(const CommandRecord &command);

/// The options that several commands take.
inline constexpr OptionRecord units_option{"--units", "metric|us|imperial",
                                           "units of the output (metric)"};
inline constexpr OptionRecord json_option{"--json", "", "print JSON, full precision"};
inline constexpr OptionRecord output_option{"--output", "FILE", "write to FILE (also -o FILE)"};
inline constexpr OptionRecord workshop_option{
    "--workshop", "FILE", "scoops and weighings (workshop.toml beside the day)"};

inline constexpr OptionRecord workshop_here_option{
    "--workshop", "FILE", "weighings and own figures (workshop.toml here)"};

Outcome<UnitSystem> units_of(const Arguments &arguments);

/// A quantity given to an option, by a reader of the library; nothing if the option is absent.
template <class T>
Outcome<std::optional<T>> option_quantity(const Arguments &arguments, std::string_view option,
                                          Result<T> (*read)(std::string_view)) {
  const auto text = arguments.value(option);
  if (!text) return std::optional<T>();
  auto value = read(*text);
  if (!value)
    return Fault{Status::bad_data,      std::string(option), value.problem().found, "", 0,
                 value.problem().remedy};
  return std::optional<T>(*value);
}

} // namespace whittaw::app
