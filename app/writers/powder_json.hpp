// JSON reports of the powder book.
#pragma once

#include "../book/book_file.hpp"

#include <whittaw/powder/cover.hpp>

#include <string>

namespace whittaw::app {

std::string powder_list_json(const BookReading &reading);
std::string powder_cover_json(const CoverNeed &need, const Cover &cover);

} // namespace whittaw::app
