// Compiled twice: as it stands into `bench::with_units`, and with the library's namespace renamed
// and plain/ first in the include path into `bench::with_doubles`. BENCH_KERNELS names the object.
#include "kernels.hpp"

#include <whittaw/whittaw.hpp>

#include <array>
#include <string>
#include <type_traits>
#include <utility>

namespace {

using namespace whittaw;

#ifdef whittaw
static_assert(std::is_same_v<Mass, double> && std::is_same_v<Money, double>);
#else
static_assert(!std::is_same_v<Mass, double> && !std::is_same_v<Money, double>);
#endif

Hide goat(std::string tag, double steps) {
  return {std::move(tag), find_species("goat"), LiveWeight{(20.0 + steps) * kilogram}};
}
Hide sheep(std::string tag, double steps) {
  return {std::move(tag),
          find_species("sheep"),
          GreenWeight{(4.0 + 0.1 * steps) * kilogram},
          {},
          Trim::square};
}
Hide calf(std::string tag, double steps) {
  const double wider = 1.0 + 0.01 * steps;
  Tape tape{1.4 * metre, {}, {}};
  for (const double width : {0.50, 0.92, 1.05, 1.10, 1.02, 0.88, 0.60})
    tape.widths.push_back(wider * width * metre);
  return {std::move(tag), find_species("cattle"), std::move(tape), {}, Trim::ellipse};
}
Hide deer(std::string tag, double steps) {
  return {std::move(tag), find_species("deer"), KnownArea{(0.9 + 0.02 * steps) * square_metre},
          (2.5 + 0.05 * steps) * kilogram};
}
Hide rabbit(std::string tag, double steps) {
  const double wider = 1.0 + 0.01 * steps;
  return {std::move(tag), find_species("rabbit"),
          Tape{0.45 * wider * metre, {0.30 * wider * metre}, {}}};
}

std::vector<Hide> mixed_hides(std::size_t number) {
  constexpr std::array makers{goat, sheep, calf, deer, rabbit};
  std::vector<Hide> hides;
  hides.reserve(number);
  for (std::size_t i = 0; i < number; ++i)
    hides.push_back(makers[i % makers.size()]("H" + std::to_string(i + 1),
                                              static_cast<double>(i / makers.size() % 23)));
  return hides;
}

/// Potash alum and soda crystals in the recipe; other alums and other sodas on the shelf, the
/// first of each too little.
Day mixed_day(std::size_t number) {
  Day day;
  day.date = "2026-11-07";
  Recipe &recipe = day.recipe;
  recipe.name = "bench";
  recipe.alum = {forms::potassium_alum, pound};
  recipe.salt = {forms::salt, 2.5 * pound};
  recipe.soda = RecipePart{forms::soda_crystals, 4.0 * ounce};
  recipe.meal = RecipeMeal{find_bulk("wheat flour"), 3.0 * pound};
  recipe.water_for_alum = us_gallon;
  recipe.water_for_salt_and_soda = 0.5 * us_gallon;
  recipe.coat = 3.0 * millimetre;
  recipe.coats = 2;
  day.hides = mixed_hides(number);
  const auto bag = [](const Form &form, const char *grain, double kilograms, double price) {
    Bag made;
    made.form = form;
    made.grain = find_bulk(grain);
    made.amount = kilograms * kilogram;
    made.price = price * tender / kilogram;
    return made;
  };
  day.shelf.push_back(bag(forms::aluminium_sulfate_14, "granular aluminium sulfate", 0.5, 1.2));
  day.shelf.push_back(bag(aluminium_sulfate_of_alumina({0.17}), "powdered alum", 1e6, 2.1));
  day.shelf.push_back(bag(forms::soda_monohydrate, "dense soda ash", 0.05, 0.9));
  day.shelf.push_back(bag(forms::soda_anhydrous, "light soda ash", 1e6, 1.8));
  day.shelf.push_back(bag(forms::salt, "table salt", 1e6, 0.4));
  day.water_temperature = degrees_celsius(12.0);
  return day;
}

class BatchJob : public bench::Job {
public:
  explicit BatchJob(std::size_t hides) : day_(mixed_day(hides)) {}

  double run() const override { return count(make_batch(day_)->paste, cubic_metre); }

  std::vector<double> figures() const override {
    const auto made = make_batch(day_);
    std::vector<double> all;
    for (const auto &hide : made->hides) {
      all.push_back(count(hide.area.trimmed.value, square_metre));
      all.push_back(count(hide.area.trimmed.sd(), square_metre));
      all.push_back(count(hide.fleshed_weight.value, kilogram));
      all.push_back(hide.offer.value);
      all.push_back(hide.offer_spread.value);
    }
    for (const auto &ingredient : made->ingredients) {
      all.push_back(count(ingredient.mass, kilogram));
      all.push_back(count(ingredient.cost.value_or(0.0 * tender), tender));
    }
    for (const auto &exchange : made->exchanges) all.push_back(exchange.times_as_strong);
    for (const auto &salt : made->liquor.mixed) {
      all.push_back(salt.present.value);
      all.push_back(salt.limit.value);
      all.push_back(count(salt.undissolved, kilogram));
    }
    all.push_back(count(made->area.sd(), square_metre));
    all.push_back(count(made->area_enough, square_metre));
    all.push_back(count(made->paste, cubic_metre));
    all.push_back(count(made->bucket, cubic_metre));
    all.push_back(count(made->liquor.carbon_dioxide, cubic_metre));
    all.push_back(made->liquor.basicity.value);
    all.push_back(made->offer_spread.value);
    all.push_back(count(made->cost, tender));
    return all;
  }

private:
  Day day_;
};

class CoreJob : public bench::Job {
public:
  explicit CoreJob(std::size_t hides) {
    for (const auto &hide : mixed_hides(hides)) {
      if (const auto *live = std::get_if<LiveWeight>(&hide.measure)) live_.push_back(live->mass);
      if (const auto *tape = std::get_if<Tape>(&hide.measure)) tapes_.push_back(*tape);
    }
    for (const auto &tape : tapes_) stations_.push_back(detail::stations(tape));
  }

  double run() const override {
    const Sums sums = work();
    return count(sums.area + sums.tape, square_metre) + sums.basicity.value;
  }

  std::vector<double> figures() const override {
    const Sums sums = work();
    return {count(sums.area, square_metre), count(sums.tape, square_metre), sums.basicity.value,
            count(sums.gas, litre), count(sums.enough, square_metre)};
  }

private:
  struct Sums {
    Area area = 0.0 * square_metre;
    Area tape = 0.0 * square_metre;
    Area enough = 0.0 * square_metre;
    Volume gas = 0.0 * litre;
    Basicity basicity;
  };
  std::vector<Mass> live_;
  std::vector<Tape> tapes_;
  std::vector<std::vector<Length>> stations_;

  Sums work() const {
    Sums sums;
    const WeightLaw &law = *find_species("goat")->weight_law;
    Estimate<Area> total;
    LiquorAmounts liquor;
    for (const auto &mass : live_) {
      const Estimate<Mass> weight{mass, 0.02 * mass, {}};
      total += power_law(law.coefficient, weight, kilogram, law.exponent);
      add_to(liquor, forms::potassium_alum, 0.1 * mass);
      add_to(liquor, forms::soda_crystals, 0.02 * mass);
    }
    sums.area = total.value;
    sums.enough = enough_for(total, usual_chance);
    for (std::size_t i = 0; i < tapes_.size(); ++i) {
      sums.tape += detail::trapezoid(stations_[i], tapes_[i].widths);
      sums.tape += detail::simpson(stations_[i], tapes_[i].widths);
    }
    sums.basicity = basicity(liquor);
    sums.gas = carbon_dioxide_volume(liquor.carbonate, gas_temperature);
    return sums;
  }
};

class ScoopsJob : public bench::Job {
public:
  explicit ScoopsJob(std::size_t hides) : batch_(*make_batch(mixed_day(hides))) {
    workshop_.scoops = {{us_cup, "1 cup"},
                        {0.5 * us_cup, "1/2 cup"},
                        {0.25 * us_cup, "1/4 cup"},
                        {us_tablespoon, "1 tbsp"},
                        {us_teaspoon, "1 tsp"}};
  }

  double run() const override { return measure_batch(batch_, workshop_).ratio_error; }

  std::vector<double> figures() const override {
    const auto portions = measure_batch(batch_, workshop_);
    std::vector<double> all{portions.ratio_error, portions.basicity.value, portions.basicity_sd};
    for (const auto &portion : portions.each)
      all.push_back(portion.volume ? count(portion.volume->sd(), litre) : 0.0);
    return all;
  }

private:
  Batch batch_;
  Workshop workshop_;
};

template <class Made> std::unique_ptr<bench::Job> job(std::size_t hides) {
  return std::make_unique<Made>(hides);
}

} // namespace

const bench::Kernels bench::BENCH_KERNELS{job<BatchJob>, job<CoreJob>, job<ScoopsJob>};
