#include "powder_json.hpp"

#include <nlohmann/json.hpp>

namespace whittaw::app {

namespace {
using Json = nlohmann::ordered_json;

Json contents_json(const Contents &contents) {
  Json json = Json::object();
  for (const auto &row : part_table) {
    const bool by_mass = row.part == Part::meal || row.part == Part::other;
    json[std::string(row.name) + (by_mass ? "_g" : "_mol")] =
        static_cast<double>(contents[row.part]) * 1e-6;
  }
  return json;
}
} // namespace

std::string powder_list_json(const BookReading &reading) {
  Json json{{"schema", "whittaw/powder-list/1"}, {"jars", Json::array()}};
  for (const auto &jar : reading.book.jars) {
    Json origins = Json::array();
    for (const auto &origin : jar.origins)
      origins.push_back({{"batch", origin.batch}, {"dry_g", count(origin.dry, gram)}});
    json["jars"].push_back({{"jar", jar.name},
                            {"mass_g", count(mass_of(jar), gram)},
                            {"dry_g", count(dry_mass(jar.contents), gram)},
                            {"moisture", moisture_of(jar).value},
                            {"strength", strength_of(jar).value},
                            {"strength_sd", strength_of(jar).value * aluminium_spread(jar).value},
                            {"rounds", jar.rounds},
                            {"not_reusable", not_reusable(jar)},
                            {"contents", contents_json(jar.contents)},
                            {"origins", origins}});
  }
  json["last_entry"] = reading.book.last_number;
  json["complete"] = reading.damaged.empty();
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

std::string powder_cover_json(const CoverNeed &need, const Cover &cover) {
  constexpr std::array<std::string_view, 3> answers{"yes", "with_alum", "no"};
  Json json{{"schema", "whittaw/powder-cover/1"},
            {"answer", answers[static_cast<std::size_t>(cover.answer)]},
            {"area_m2", count(need.area, square_metre)},
            {"fleshed_g", count(need.fleshed_weight, gram)},
            {"offer", need.offer.value},
            {"powder_wanted_g", count(cover.powder_wanted, gram)},
            {"powder_g", count(cover.powder, gram)},
            {"alum_wanted_g", count(cover.alum_wanted, gram)},
            {"alum_g", count(cover.alum, gram)},
            {"chance_enough", cover.enough.value},
            {"fresh_alum_g", count(cover.fresh_alum, gram)},
            {"fresh_salt_g", count(cover.fresh_salt, gram)},
            {"draws", Json::array()}};
  for (const auto &draw : cover.draws)
    json["draws"].push_back({{"jar", draw.jar},
                             {"mass_g", count(draw.mass, gram)},
                             {"left_g", count(draw.left, gram)}});
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

} // namespace whittaw::app
