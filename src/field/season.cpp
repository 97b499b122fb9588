#include "field/season.h"
namespace toft::field {
Strata with_crust(const Strata& soil, Metres depth, double factor) { Strata s = soil; OhmMetres top = s.layers.empty() ? s.deepest : s.layers.front().resistivity; s.layers = {{top * factor, depth}}; return s; }
Outcome<Field> solve_field(const Strata& s, const std::vector<Wire>& w, const Cutting& c) {
 if (s.layers.empty()) return solve_field(uniform_soil(s.deepest), w, c);
 return solve_field(LayeredSoil{s.layers[0].resistivity, s.deepest, s.layers[0].thickness}, w, c); }
}
