// Why a command could not do its work: one form for every error.
#pragma once

#include <whittaw/quantity/result.hpp>

#include <string>
#include <string_view>

namespace whittaw::app {

/// Exit statuses; the numbers are those of sysexits.h where it has one.
enum class Status {
  done = 0,
  check_says_stop = 1,
  usage = 64,
  bad_data = 65,
  no_input = 66,
  cannot_create = 73,
  io_error = 74,
  busy = 75,
};

struct Fault {
  Status status = Status::bad_data;
  std::string place;      ///< "day.toml:12:8", an option, or empty
  std::string found;      ///< what was found and why it will not do
  std::string excerpt;    ///< the line it stands in; may be empty
  std::size_t column = 0; ///< of the excerpt, from 1; 0 for none
  std::string remedy;
};

template <class T> using Outcome = Result<T, Fault>;

/// The text for a person: place, what was found, the line with a mark under it, and a remedy.
std::string write_fault(const Fault &fault);

/// Text with control characters, which could drive a terminal, replaced.
std::string printable(std::string_view text);

/// The known word nearest to `word`, if one is near enough to have been meant.
template <class Words> std::string nearest(std::string_view word, const Words &known);

/// Edits (a letter added, dropped, changed, or two swapped) from one word to another.
std::size_t edits_between(std::string_view from, std::string_view to);

template <class Words> std::string nearest(std::string_view word, const Words &known) {
  std::string best;
  std::size_t least = word.size() < 4 ? 2 : 1 + word.size() / 3;
  for (const auto &candidate : known) {
    const std::string_view text(candidate);
    const bool begins = word.size() >= 3 && text.starts_with(word);
    const std::size_t edits = begins ? 1 : edits_between(word, text);
    if (edits < least) {
      least = edits;
      best = text;
    }
  }
  return best;
}

/// "did you mean 'x'? " where one is near, else nothing.
template <class Words> std::string did_you_mean(std::string_view word, const Words &known) {
  const std::string near = nearest(word, known);
  return near.empty() ? std::string() : "did you mean '" + near + "'? ";
}

} // namespace whittaw::app
