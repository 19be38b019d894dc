#include "powder.hpp"

#include "../files/files.hpp"
#include "../sheet/sheet.hpp"
#include "../writers/powder_json.hpp"
#include "../writers/writers.hpp"

#include <whittaw/powder/cover.hpp>

#include <fmt/format.h>

#include <array>
#include <cstdio>

namespace whittaw::app {

namespace {

/// What a reader of the book must know of its state, one line each.
std::vector<std::string> warnings_of(const BookReading &reading, const std::string &path) {
  std::vector<std::string> lines;
  constexpr std::size_t most = 20;
  for (std::size_t i = 0; i < reading.damaged.size() && i < most; ++i)
    lines.push_back(fmt::format("{}:{}: damaged entry left out: {}", path, reading.damaged[i].line,
                                reading.damaged[i].why));
  if (reading.damaged.size() > most)
    lines.push_back(
        fmt::format("{}: {} more damaged entries", path, reading.damaged.size() - most));
  if (!reading.damaged.empty())
    lines.push_back(path + ": balances are incomplete until these are mended");
  if (reading.torn_bytes > 0)
    lines.push_back(
        fmt::format("{}:{}: the last entry is not finished and left out; the next entry "
                    "written moves it aside",
                    path, reading.torn_line));
  return lines;
}

void say(const std::vector<std::string> &lines) {
  for (const auto &line : lines) std::fputs(("whittaw: " + printable(line) + "\n").c_str(), stderr);
}

Outcome<Status> finish(const Arguments &arguments, const BookReading &reading,
                       const std::string &text) {
  say(warnings_of(reading, book_path(arguments)));
  if (auto fault = write_output(arguments.value(output_option.name), text)) return *fault;
  return Status::done;
}

/// "53 %", and no decimals where the chance is next to nothing or next to sure.
std::string chance_in_words(Chance chance) {
  if (chance.value < 0.001) return "less than 0.1 %";
  if (chance.value > 0.999) return "more than 99.9 %";
  return write_percent(chance, 2);
}

std::vector<std::string> jar_row(const Jar &jar, UnitSystem units) {
  if (is_empty(jar.contents)) return {jar.name, "empty", "", "", "", "", ""};
  std::string origins;
  for (const auto &origin : jar.origins)
    if (origin.dry > 0.0005 * kilogram)
      origins += (origins.empty() ? "" : "; ") + origin.batch + " " + write_mass(origin.dry, units);
  const std::string why = not_reusable(jar);
  return {
      jar.name,
      write_mass(mass_of(jar), units),
      write_percent_spread(strength_of(jar), strength_of(jar).value * aluminium_spread(jar).value),
      write_percent(moisture_of(jar), 2),
      std::to_string(jar.rounds),
      why.empty() ? "yes" : "NO: " + why,
      origins};
}

/// An account as one word, another for each name: letters, digits and marks that mean nothing in a
/// journal stay, a blank becomes an underscore, all else its byte in hexadecimal.
std::string account_name(std::string_view name) {
  constexpr std::string_view plain =
      "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-.";
  std::string result;
  for (const char c : name) {
    if (c == ' ')
      result += '_';
    else if (plain.find(c) != std::string_view::npos ||
             (static_cast<unsigned char>(c) & 0x80U) != 0U)
      result += c;
    else
      result += fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return result;
}

} // namespace

Outcome<Status> list_powder(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto reading = read_book(book_path(arguments), {});
  if (!reading) return reading.problem();
  if (arguments.has(json_option.name))
    return finish(arguments, *reading, powder_list_json(*reading));
  Sheet sheet;
  sheet.title = "Saved powder";
  SheetTable table;
  table.title = "Jars";
  table.columns = {"jar", "holds", "strength", "moisture", "rounds", "may be used", "from (dry)"};
  for (const auto &jar : reading->book.jars) table.rows.push_back(jar_row(jar, *units));
  table.note = "Strength is aluminium by dry mass against fresh dry paste, \u00b1 one standard "
               "deviation; what a skin takes up is an assumption.";
  sheet.tables.push_back(std::move(table));
  sheet.cautions = {"Dust mask to handle powder. Do not carry powder from one flock to another."};
  return finish(arguments, *reading, write_text(sheet));
}

Outcome<Status> show_history(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  const auto wanted = arguments.value(jar_option.name);
  std::string text;
  const auto reading = read_book(
      book_path(arguments), [&](const PowderEntry &entry, const Posting &, const PowderBook &book) {
        if (wanted && entry.jar != *wanted) return;
        std::string line =
            fmt::format("{:>5}  {}  {:<10}", entry.number, entry.at, deed_name(entry.deed));
        if (!entry.jar.empty()) line += " jar " + entry.jar;
        if (entry.mass > 0.0 * kilogram) line += "  " + write_mass(entry.mass, *units);
        if (entry.deed == Deed::undone) line += fmt::format(" entry {}", entry.undoes);
        if (const Jar *jar = find_jar(book, entry.jar); jar != nullptr)
          line += fmt::format("  now {}", write_mass(mass_of(*jar), *units));
        if (!entry.batch.empty()) line += "  " + entry.batch;
        if (!entry.hides.empty()) line += " (" + entry.hides + ")";
        if (!entry.note.empty()) line += "  " + entry.note;
        text += printable(line) + "\n";
      });
  if (!reading) return reading.problem();
  if (wanted && find_jar(reading->book, *wanted) == nullptr) {
    const auto unknown = detail::unknown_jar(reading->book, *wanted);
    return Fault{Status::bad_data, std::string(jar_option.name), unknown.found, "", 0,
                 unknown.remedy};
  }
  return finish(arguments, *reading, text);
}

Outcome<Status> print_journal(const Arguments &arguments) {
  std::string text = "; Movements of saved powder: mol of each part, g of meal and other.\n";
  const auto reading =
      read_book(book_path(arguments), [&](const PowderEntry &entry, const Posting &posting,
                                          const PowderBook &) {
        if (is_empty(posting.contents)) return;
        text += fmt::format("\n{} * ({}) {}\n", entry.at.substr(0, 10), entry.number,
                            deed_name(entry.deed));
        for (const auto &row : part_table) {
          const std::int64_t micro = posting.contents[row.part];
          if (micro == 0) continue;
          const std::string amount = fmt::format("{}.{:06}", micro / 1'000'000, micro % 1'000'000);
          text += fmt::format("    {}  {} {}\n    {}  -{} {}\n", account_name(posting.to), amount,
                              row.name, account_name(posting.from), amount, row.name);
        }
      });
  if (!reading) return reading.problem();
  return finish(arguments, *reading, text);
}

Outcome<Status> show_cover(const Arguments &arguments) {
  const auto units = units_of(arguments);
  if (!units) return units.problem();
  JarOrder order = JarOrder::oldest;
  if (const auto word = arguments.value(order_option.name)) {
    constexpr std::array<std::string_view, 3> names{"oldest", "strongest", "least-left"};
    const auto found = std::find(names.begin(), names.end(), *word);
    if (found == names.end())
      return Fault{Status::usage,
                   std::string(order_option.name),
                   fmt::format("'{}' is not known", *word),
                   "",
                   0,
                   did_you_mean(*word, names) + "known: oldest, strongest, least-left"};
    order = static_cast<JarOrder>(found - names.begin());
  }
  const auto from = day_and_hides(arguments);
  if (!from) return from.problem();
  const auto reading = read_book(book_path(arguments), {});
  if (!reading) return reading.problem();

  CoverNeed need;
  need.offer = from->day.recipe.offer.value_or(usual_offer).low;
  need.chance = from->day.chance;
  for (const std::size_t hide : from->hides) {
    need.area += from->batch.hides[hide].area.trimmed.value;
    need.fleshed_weight += from->batch.hides[hide].fleshed_weight.value;
  }
  const Cover result = cover(reading->book, need, order);
  if (arguments.has(json_option.name))
    return finish(arguments, *reading, powder_cover_json(need, result));

  std::string text;
  switch (result.answer) {
  case CoverAnswer::yes: text = "Yes: the saved powder covers it.\n"; break;
  case CoverAnswer::with_alum:
    text =
        fmt::format("Yes, with {} potash alum and {} salt stirred in.\n",
                    write_mass(result.fresh_alum, *units), write_mass(result.fresh_salt, *units));
    break;
  case CoverAnswer::no: text = "No: there is too little powder that may be used.\n"; break;
  }
  text +=
      fmt::format("Dusting {} wants {} of powder; {} is at hand.\n", write_area(need.area, *units),
                  write_mass(result.powder_wanted, *units), write_mass(result.powder, *units));
  text +=
      fmt::format("An offer of {} wants {} of alum, as potash alum; this powder holds {}, enough "
                  "with {} chance.\n",
                  write_percent(need.offer, 2), write_mass(result.alum_wanted, *units),
                  write_mass(result.alum, *units), chance_in_words(result.enough));
  for (const auto &draw : result.draws)
    text += fmt::format("  {} from jar {}, leaving {}\n", write_mass(draw.mass, *units),
                        printable(draw.jar), write_mass(draw.left, *units));
  for (const auto &jar : reading->book.jars)
    if (const std::string why = not_reusable(jar); !why.empty() && !is_empty(jar.contents))
      text += fmt::format("  not jar {}: {}\n", printable(jar.name), why);
  text += "Dust mask. Do not carry powder from one flock to another. What a skin takes up, and the "
          "dusting rate,\nare assumptions.\n";
  return finish(arguments, *reading, text);
}

} // namespace whittaw::app
