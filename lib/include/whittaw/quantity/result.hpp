// A value or a problem. Problems are values; nothing in the library throws for bad input.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace whittaw {

/// What was wrong and what would do. The caller adds the place (file, line, option).
struct Problem {
  std::string found;  ///< what was found, and why it will not do
  std::string remedy; ///< what to write instead
};

/// A value, or why there is none. Ask ok() before taking either.
template <class T, class E = Problem> class [[nodiscard]] Result {
public:
  Result(T value) : content_(std::in_place_index<0>, std::move(value)) {}
  Result(E problem) : content_(std::in_place_index<1>, std::move(problem)) {}

  [[nodiscard]] bool ok() const { return content_.index() == 0; }
  explicit operator bool() const { return ok(); }
  [[nodiscard]] const T &value() const { return *std::get_if<0>(&content_); }
  [[nodiscard]] T &value() { return *std::get_if<0>(&content_); }
  [[nodiscard]] const E &problem() const { return *std::get_if<1>(&content_); }
  const T &operator*() const { return value(); }
  const T *operator->() const { return &value(); }

private:
  std::variant<T, E> content_;
};

} // namespace whittaw
