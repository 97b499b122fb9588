#pragma once
// Days of the Gregorian calendar, for dates of papers.

#include <optional>
#include <string>

namespace toft {

/// Days from the first of January 1970 to that day; none where it is no such day.
std::optional<long> days_since_1970(const std::string& date);

/// Year-month-day so many days after `date` (ISO 8601, years 1 to 9999); empty where `date` is no
/// such day.
std::string days_after(const std::string& date, long days);

/// "29 November 2026"; the words as they are where they are no date.
std::string long_date(const std::string& date);

}  // namespace toft
