#pragma once
// Figures of the ground as its pictures write them; what is no number, or has no end, in words.

#include <string>

namespace toft::terrain {

/// Whether the length is a number above 0, with an end.
bool length_known(double metres);

/// "84", "0.25": two digits, whole figures from 10 on; "not known" for what is
/// no number, "no end" for endless.
std::string figure_words(double figure);

/// "84 to 141 Ω", one figure where both write alike.
std::string range_words(double low, double high, const std::string& unit);

/// "3.5 m": three digits.
std::string metre_words(double metres);

/// Of a load in watts: "300 W", "3.2 kW".
std::string load_words(double watts);

/// Of a share from 0 to 1: "8 %"; below a thousandth "under 0.1 %".
std::string share_words(double share);

/// "8 to 14 %".
std::string share_range_words(double low, double high);

}  // namespace toft::terrain
