// A program outside the tree: what a goat of 27 kg yields, and the bulletin's basicity.
#include CONSUMER_HEADER

#include <cstdio>

int main() {
  using namespace whittaw;
  const Hide goat{"G1", find_species("goat"), LiveWeight{27.0 * kilogram}};
  LiquorAmounts liquor;
  add_to(liquor, forms::potassium_alum, pound);
  add_to(liquor, forms::soda_crystals, 4.0 * ounce);
  std::printf("%.3f m2, basicity %.1f %%\n", count(hide_area(goat)->flayed.value, square_metre),
              100.0 * basicity(liquor).value);
}
