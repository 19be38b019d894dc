// Everything in the library.
#pragma once

#include <whittaw/hide/hide.hpp>
#include <whittaw/liquor/acidity.hpp>
#include <whittaw/liquor/basicity.hpp>
#include <whittaw/liquor/gas.hpp>
#include <whittaw/liquor/saturation.hpp>
#include <whittaw/paste/batch.hpp>
#include <whittaw/paste/cautions.hpp>
#include <whittaw/paste/checks.hpp>
#include <whittaw/paste/day.hpp>
#include <whittaw/paste/measures.hpp>
#include <whittaw/paste/recipe.hpp>
#include <whittaw/paste/shelf.hpp>
#include <whittaw/paste/workshop.hpp>
#include <whittaw/quantity/chance.hpp>
#include <whittaw/quantity/estimate.hpp>
#include <whittaw/quantity/money.hpp>
#include <whittaw/quantity/read.hpp>
#include <whittaw/quantity/read_money.hpp>
#include <whittaw/quantity/units.hpp>
#include <whittaw/quantity/write.hpp>
#include <whittaw/substance/bulk_density.hpp>
#include <whittaw/substance/form.hpp>
#include <whittaw/substance/formula.hpp>
#include <whittaw/substance/solubility.hpp>
