#include "dates.hpp"

#include <charconv>
#include <chrono>

namespace whittaw::app {

namespace {

/// The digits of a part of a text, or -1.
int number_at(std::string_view text, std::size_t from, std::size_t length) {
  int value = -1;
  const char *begin = text.data() + from;
  if (*begin < '0' || *begin > '9') return -1;
  const auto read = std::from_chars(begin, begin + length, value);
  return read.ptr == begin + length ? value : -1;
}

} // namespace

bool is_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const int year = number_at(text, 0, 4);
  const std::chrono::year_month_day date{
      std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(number_at(text, 5, 2))},
      std::chrono::day{static_cast<unsigned>(number_at(text, 8, 2))}};
  return year >= 1900 && date.ok();
}

bool is_time(std::string_view text) {
  if (text.size() != 20 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != 'Z')
    return false;
  const auto below = [&](std::size_t from, int limit) {
    const int value = number_at(text, from, 2);
    return value >= 0 && value < limit;
  };
  return is_date(text.substr(0, 10)) && below(11, 24) && below(14, 60) && below(17, 61);
}

} // namespace whittaw::app
