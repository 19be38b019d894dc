#include "powder.hpp"

#include "../files/files.hpp"
#include "../readers/day_reader.hpp"
#include "../readers/node.hpp"
#include "commands.hpp"

#include <whittaw/quantity/read.hpp>

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cstdio>

namespace whittaw::app {

namespace {

Fault usage_fault(std::string place, std::string found, std::string remedy) {
  return {Status::usage, std::move(place), std::move(found), "", 0, std::move(remedy)};
}

Result<MassFraction> read_moisture(std::string_view text) {
  return read_fraction<MassFractionKind>(text, {0.0}, {0.9});
}

Outcome<std::int64_t> read_whole(const std::string &text, std::string_view place, std::int64_t low,
                                 std::int64_t high) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc{} || end != text.data() + text.size() || number < low || number > high)
    return Fault{Status::bad_data,
                 std::string(place),
                 fmt::format("'{}' is not a number here", text),
                 "",
                 0,
                 fmt::format("write a whole number from {} to {}", low, high)};
  return number;
}

/// Copies mass, note and jar, and refuses what the verb needs and does not have.
Outcome<PowderEntry> common_entry(const Arguments &arguments, std::string_view verb, bool wants_jar,
                                  bool wants_mass) {
  PowderEntry entry;
  entry.jar = arguments.value(jar_option.name).value_or("");
  entry.note = arguments.value(note_option.name).value_or("");
  if (entry.jar.size() > 100 || entry.note.size() > 2000)
    return usage_fault(std::string(jar_option.name), "the jar's name or the note is too long",
                       "keep a name to 100 bytes and a note to 2000");
  if (!is_utf8(entry.jar) || !is_utf8(entry.note))
    return Fault{Status::bad_data,
                 std::string(note_option.name),
                 "is not UTF-8 text",
                 "",
                 0,
                 "write it in a terminal that speaks UTF-8"};
  if (wants_jar && entry.jar.empty())
    return usage_fault(fmt::format("powder {}", verb), "wants --jar", "add --jar A");
  const auto mass = option_quantity(arguments, mass_option.name, &read_mass);
  if (!mass) return mass.problem();
  if (wants_mass && !*mass)
    return usage_fault(fmt::format("powder {}", verb), "wants --mass", "add --mass \"850 g\"");
  if (*mass) entry.mass = **mass;
  return entry;
}

Outcome<PowderEntry> saved_entry(const Arguments &arguments) {
  auto entry = common_entry(arguments, "save", true, true);
  if (!entry) return entry;
  PowderEntry &saved = entry.value();
  saved.deed = Deed::saved;
  const auto moisture = option_quantity(arguments, moisture_option.name, &read_moisture);
  if (!moisture) return moisture.problem();
  saved.moisture = *moisture;
  saved.slipped = arguments.has(slipped_option.name);
  saved.suspect = arguments.has(suspect_option.name);
  if (const auto rounds = arguments.value(rounds_option.name)) {
    const auto number = read_whole(*rounds, rounds_option.name, 1, 100);
    if (!number) return number.problem();
    saved.rounds = static_cast<int>(*number);
  }
  const auto from = day_and_hides(arguments);
  if (!from) return from.problem();
  saved.batch = from->day.date + " " + from->day.recipe.name;
  for (const std::size_t hide : from->hides) {
    saved.contents += contents_on_hide(from->batch, hide);
    saved.hides += (saved.hides.empty() ? "" : ", ") + from->day.hides[hide].tag;
  }
  return entry;
}

Outcome<PowderEntry> topped_up_entry(const Arguments &arguments) {
  auto entry = common_entry(arguments, "top-up", true, true);
  if (!entry) return entry;
  entry.value().deed = Deed::topped_up;
  const std::string kind = arguments.value(kind_option.name).value_or("");
  for (const Form &form : {forms::potassium_alum, forms::ammonium_alum, forms::salt}) {
    if (form.name != kind) continue;
    entry.value().contents = contents_of(form, entry->mass);
    entry.value().batch = kind;
    return entry;
  }
  return usage_fault(std::string(kind_option.name), fmt::format("'{}' is not known", kind),
                     "known: potassium alum, ammonium alum, salt");
}

Outcome<PowderEntry> entry_for(const Arguments &arguments, std::string_view verb) {
  if (verb == "save") return saved_entry(arguments);
  if (verb == "top-up") return topped_up_entry(arguments);
  const bool has_jar = verb != "note" && verb != "undo";
  auto entry = common_entry(arguments, verb, has_jar, has_jar && verb != "throw-out");
  if (!entry) return entry;
  PowderEntry &written = entry.value();
  if (verb == "use") {
    written.deed = Deed::used;
    written.hides = arguments.value(hides_option.name).value_or("");
  } else if (verb == "sieve") {
    written.deed = Deed::sieved;
  } else if (verb == "throw-out") {
    written.deed = Deed::thrown_out;
  } else if (verb == "weigh") {
    written.deed = Deed::weighed;
  } else if (verb == "note") {
    if (written.note.empty())
      return usage_fault("powder note", "wants --note", "add --note \"...\"");
    written.deed = Deed::noted;
  } else {
    const auto number = read_whole(arguments.operands[1], "powder undo", 1, 1'000'000'000'000);
    if (!number) return number.problem();
    written.deed = Deed::undone;
    written.undoes = *number;
  }
  return entry;
}

struct Verb {
  std::string_view name;
  std::size_t operands;              ///< after the verb
  std::vector<OptionRecord> options; ///< besides --book
  Outcome<Status> (*view)(const Arguments &) = nullptr;
};

const std::vector<Verb> &verbs() {
  static const std::vector<Verb> all{
      {"save",
       0,
       {jar_option, mass_option, day_option, hides_option, moisture_option, rounds_option,
        slipped_option, suspect_option, note_option, workshop_option}},
      {"use", 0, {jar_option, mass_option, hides_option, note_option}},
      {"top-up", 0, {jar_option, mass_option, kind_option, note_option}},
      {"sieve", 0, {jar_option, mass_option, note_option}},
      {"throw-out", 0, {jar_option, mass_option, note_option}},
      {"weigh", 0, {jar_option, mass_option, note_option}},
      {"note", 0, {jar_option, note_option}},
      {"undo", 1, {note_option}},
      {"list", 0, {units_option, json_option, output_option}, list_powder},
      {"history", 0, {jar_option, units_option, output_option}, show_history},
      {"cover",
       0,
       {day_option, hides_option, order_option, workshop_option, units_option, json_option,
        output_option},
       show_cover},
      {"journal", 0, {output_option}, print_journal},
  };
  return all;
}

/// An option that says nothing to the verb would be passed over without a word.
std::optional<Fault> unused_option(const Verb &verb, const Arguments &arguments) {
  for (const auto &[name, value] : arguments.values) {
    bool used = name == book_option.name;
    std::string all(book_option.name);
    for (const auto &option : verb.options) {
      used = used || option.name == name;
      all += ", " + std::string(option.name);
    }
    if (!used)
      return usage_fault(name, fmt::format("says nothing to powder {}", verb.name),
                         fmt::format("leave it out; powder {} takes {}", verb.name, all));
  }
  return std::nullopt;
}

Outcome<Status> run(const Arguments &arguments) {
  const std::string &word = arguments.operands[0];
  std::vector<std::string_view> names;
  for (const auto &verb : verbs()) {
    names.push_back(verb.name);
    if (verb.name != word) continue;
    if (arguments.operands.size() != verb.operands + 1)
      return usage_fault("powder " + word,
                         verb.operands == 0 ? "takes no more words" : "wants an entry's number",
                         "see whittaw powder --help");
    if (auto fault = unused_option(verb, arguments)) return *fault;
    return verb.view != nullptr ? verb.view(arguments) : write_powder(arguments, word);
  }
  std::string all;
  for (const auto name : names) all += (all.empty() ? "" : ", ") + std::string(name);
  return usage_fault("powder", fmt::format("'{}' is not known", word),
                     did_you_mean(word, names) + "known: " + all);
}

} // namespace

Outcome<DayHides> day_and_hides(const Arguments &arguments) {
  const auto path = arguments.value(day_option.name);
  if (!path)
    return usage_fault(std::string(day_option.name), "the day is wanted", "add --day day.toml");
  auto file = read_day(*path, arguments.value(workshop_option.name));
  if (!file) return file.problem();
  auto batch = make_batch(file->day);
  if (!batch)
    return Fault{Status::bad_data, *path, batch.problem().found, "", 0, batch.problem().remedy};
  DayHides result{file->day, *batch, {}};
  const auto wanted = arguments.value(hides_option.name);
  std::string_view rest = wanted ? std::string_view(*wanted) : std::string_view();
  if (!wanted)
    for (std::size_t i = 0; i < result.day.hides.size(); ++i) result.hides.push_back(i);
  while (!rest.empty()) {
    const std::size_t comma = rest.find(',');
    std::string_view tag = rest.substr(0, comma);
    rest = comma == std::string_view::npos ? std::string_view() : rest.substr(comma + 1);
    while (tag.starts_with(' ')) tag.remove_prefix(1);
    while (tag.ends_with(' ')) tag.remove_suffix(1);
    std::size_t place = 0;
    std::vector<std::string_view> tags;
    while (place < result.day.hides.size() && result.day.hides[place].tag != tag)
      tags.push_back(result.day.hides[place++].tag);
    if (place == result.day.hides.size())
      return Fault{Status::bad_data,
                   std::string(hides_option.name),
                   fmt::format("no hide of the day has the tag '{}'", tag),
                   "",
                   0,
                   did_you_mean(tag, tags) + "give tags of " + *path};
    if (std::find(result.hides.begin(), result.hides.end(), place) != result.hides.end())
      return Fault{Status::bad_data,
                   std::string(hides_option.name),
                   fmt::format("'{}' is named twice", tag),
                   "",
                   0,
                   "name each hide once"};
    result.hides.push_back(place);
  }
  return result;
}

Outcome<Status> write_powder(const Arguments &arguments, std::string_view verb) {
  auto entry = entry_for(arguments, verb);
  if (!entry) return entry.problem();
  std::vector<std::string> said;
  auto written = append_entry(book_path(arguments), std::move(entry.value()), said);
  for (const auto &line : said) std::fputs(("whittaw: " + printable(line) + "\n").c_str(), stderr);
  if (!written) return written.problem();
  const std::string mass = written->mass > 0.0 * kilogram
                               ? write_mass(written->mass, UnitSystem::metric) + " "
                               : std::string();
  const std::string text =
      fmt::format("entry {}: {}{}{}\n", written->number, mass, deed_name(written->deed),
                  written->jar.empty() ? "" : ", jar " + printable(written->jar));
  if (auto fault = write_output(std::nullopt, text)) {
    fault->found =
        fmt::format("entry {} stands in the book, but {}", written->number, fault->found);
    fault->remedy = "do not write it again";
    return *fault;
  }
  return Status::done;
}

CommandRecord powder_command() {
  return {"powder",
          "VERB",
          1,
          2,
          "saved powder: save, use, top-up, sieve, throw-out, weigh, note, undo N,\n"
          "            list, history, cover, journal",
          {book_option, jar_option, mass_option, day_option, hides_option, moisture_option,
           rounds_option, slipped_option, suspect_option, kind_option, note_option, order_option,
           workshop_option, units_option, json_option, output_option},
          "whittaw powder save --jar A --mass \"1.2 kg\" --day day.toml --hides G1,G2",
          &run};
}

} // namespace whittaw::app
