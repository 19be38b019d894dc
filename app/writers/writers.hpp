// Renders sheets.
#pragma once

#include "../sheet/sheet.hpp"

#include <string>
#include <string_view>

namespace whittaw::app {

enum class Paper { a4, letter };

std::string write_text(const Sheet &sheet);
/// One page with its styles in it: no script, nothing fetched.
std::string write_html(const Sheet &sheet, Paper paper);

} // namespace whittaw::app
