#include "command_line.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <array>
#include <set>

namespace whittaw::app {

namespace {

Fault usage_fault(std::string place, std::string found, std::string remedy) {
  return {Status::usage, std::move(place), std::move(found), "", 0, std::move(remedy)};
}

const OptionRecord *find_option(const CommandRecord &command, std::string_view name) {
  for (const auto &option : command.options)
    if (option.name == name) return &option;
  return nullptr;
}

/// Stands before an operand that begins with a minus sign while the parser looks at it.
constexpr char amount_mark = '\x01';

Fault empty_value(const OptionRecord &option, const CommandRecord &command) {
  return usage_fault(std::string(option.name), "has an empty value",
                     fmt::format("give it {}; see whittaw {} --help", option.value, command.name));
}

Fault given_twice(const std::string &option) {
  return usage_fault(option, "is given twice", "give it once");
}

/// "-2 cup": an amount below zero, for the command to refuse, and no option.
bool is_amount(std::string_view word) {
  word.remove_prefix(1);
  return !word.empty() && (word.front() == '.' || (word.front() >= '0' && word.front() <= '9') ||
                           (static_cast<unsigned char>(word.front()) & 0x80U) != 0U);
}

/// Ties each option to its value with "=", so that a value may start with a minus sign and be told
/// what is wrong with it.
Outcome<std::vector<std::string>> tie_values(const CommandRecord &command,
                                             const std::vector<std::string> &arguments) {
  std::vector<std::string> tied;
  std::set<std::string> seen;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    std::string name = arguments[i];
    if (name == "--") {
      tied.insert(tied.end(), arguments.begin() + static_cast<std::ptrdiff_t>(i), arguments.end());
      break;
    }
    if (name == "-o") name = output_option.name;
    if (name == "-h") name = "--help";
    const std::size_t equals = name.find('=');
    if (const auto *flag = find_option(command, std::string_view(name).substr(0, equals));
        flag != nullptr && equals != std::string::npos) {
      const std::string option_name = name.substr(0, equals);
      if (flag->value.empty())
        return usage_fault(option_name, "takes no value", "leave out " + name.substr(equals));
      if (equals + 1 == name.size()) return empty_value(*flag, command);
      if (!seen.insert(option_name).second) return given_twice(option_name);
    }
    const OptionRecord *option = find_option(command, name);
    if (option == nullptr || option->value.empty()) {
      // The parser would take "-2 cup" for an option; behind a mark it is left alone.
      const bool amount = name.size() > 1 && name.front() == '-' && is_amount(name);
      tied.push_back(amount ? amount_mark + name : name);
      continue;
    }
    const bool followed =
        i + 1 < arguments.size() && find_option(command, arguments[i + 1]) == nullptr;
    if (!followed)
      return usage_fault(name, "wants a value, " + std::string(option->value),
                         fmt::format("see whittaw {} --help", command.name));
    ++i;
    if (arguments[i].empty()) return empty_value(*option, command);
    if (!seen.insert(name).second) return given_twice(name);
    tied.push_back(name + "=" + arguments[i]);
  }
  return tied;
}

} // namespace

std::optional<std::string> Arguments::value(std::string_view option) const {
  const auto found = values.find(option);
  if (found == values.end()) return std::nullopt;
  return found->second;
}

bool Arguments::has(std::string_view option) const { return values.find(option) != values.end(); }

Outcome<Arguments> parse_arguments(const CommandRecord &command,
                                   const std::vector<std::string> &arguments) {
  auto tied = tie_values(command, arguments);
  if (!tied) return tied.problem();

  CLI::App parser;
  parser.set_help_flag();
  parser.allow_extras();
  std::map<std::string, std::string, std::less<>> texts;
  std::map<std::string, bool, std::less<>> flags;
  for (const auto &option : command.options) {
    const std::string name(option.name);
    if (option.value.empty())
      parser.add_flag(name, flags[name]);
    else
      parser.add_option(name, texts[name]);
  }
  const std::string hint = fmt::format("see whittaw {} --help", command.name);
  try {
    std::vector<std::string> reversed(tied->rbegin(), tied->rend());
    parser.parse(reversed);
  } catch (const CLI::ParseError &error) {
    return usage_fault("", error.what(), hint);
  }

  Arguments parsed;
  for (const auto &[name, text] : texts)
    if (parser.count(name) > 0) parsed.values[name] = text;
  for (const auto &[name, flag] : flags)
    if (flag) parsed.values[name] = "";
  bool only_operands = false;
  for (const auto &extra : parser.remaining()) {
    if (extra == "--" && !only_operands) {
      only_operands = true;
      continue;
    }
    if (extra.empty()) {
      parsed.operands.push_back(extra);
      continue;
    }
    if (!only_operands && extra.size() > 1 && extra.front() == '-') {
      std::vector<std::string_view> names;
      for (const auto &option : command.options) names.push_back(option.name);
      const std::string word = extra.substr(0, extra.find('='));
      return usage_fault(word, fmt::format("is not an option of whittaw {}", command.name),
                         did_you_mean(word, names) + hint);
    }
    parsed.operands.push_back(extra.front() == amount_mark ? extra.substr(1) : extra);
  }
  if (parsed.has("--help")) return parsed;
  if (parsed.operands.size() < command.least_operands)
    return usage_fault(std::string(command.name), fmt::format("wants {}", command.operands),
                       fmt::format("as: {}", command.example));
  if (parsed.operands.size() > command.most_operands)
    return usage_fault("",
                       fmt::format("'{}' is more than whittaw {} takes",
                                   parsed.operands[command.most_operands], command.name),
                       fmt::format("as: {}", command.example));
  return parsed;
}

Outcome<UnitSystem> units_of(const Arguments &arguments) {
  const auto text = arguments.value(units_option.name);
  if (!text || *text == "metric") return UnitSystem::metric;
  if (*text == "us") return UnitSystem::us;
  if (*text == "imperial") return UnitSystem::imperial;
  constexpr std::array<std::string_view, 3> names{"metric", "us", "imperial"};
  return usage_fault("--units", fmt::format("'{}' is not known", *text),
                     did_you_mean(*text, names) + "known: metric, us, imperial");
}

std::string general_help() {
  std::string text = "whittaw: paste for tawed hides, sized, made up and checked\n\n"
                     "usage: whittaw COMMAND ...\n\n";
  for (const auto &command : commands())
    text += fmt::format("  {:<9} {}\n", command.name, command.summary);
  text += "\n  whittaw COMMAND --help  tells a command's options\n"
          "  whittaw --version       tells the version\n\n"
          "Exit status: 0 done, 1 a check says stop, 64 usage, 65 bad input data,\n"
          "66 no such input, 73 cannot write, 74 input or output failed.\n";
  return text;
}

std::string command_help(const CommandRecord &command) {
  std::string text =
      fmt::format("whittaw {0}: {1}\n\nusage: whittaw {0}{2}{3} [OPTIONS]\n\n", command.name,
                  command.summary, command.operands.empty() ? "" : " ", command.operands);
  for (const auto &option : command.options) {
    const std::string left = option.value.empty() ? std::string(option.name)
                                                  : fmt::format("{} {}", option.name, option.value);
    text += fmt::format("  {:<29} {}\n", left, option.help);
  }
  return text + fmt::format("\nexample: {}\n", command.example);
}

} // namespace whittaw::app
