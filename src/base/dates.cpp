#include "base/dates.h"

#include <fmt/format.h>

#include <optional>

namespace toft {

namespace {

struct Day {
    long year = 0;
    int month = 0;
    int day = 0;
};

bool leap(long year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

int days_in(long year, int month) {
    constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return month == 2 && leap(year) ? 29 : days[month - 1];
}

std::optional<Day> read_day(const std::string& date) {
    if (date.size() != 10 || date[4] != '-' || date[7] != '-') return std::nullopt;
    const auto number = [&](std::size_t from, std::size_t count) {
        long value = 0;
        for (std::size_t i = from; i < from + count; ++i) {
            if (date[i] < '0' || date[i] > '9') return -1L;
            value = 10 * value + (date[i] - '0');
        }
        return value;
    };
    const Day day{number(0, 4), static_cast<int>(number(5, 2)), static_cast<int>(number(8, 2))};
    if (day.year < 1 || day.month < 1 || day.month > 12) return std::nullopt;
    if (day.day < 1 || day.day > days_in(day.year, day.month)) return std::nullopt;
    return day;
}

}  // namespace

std::optional<long> days_since_1970(const std::string& date) {
    const std::optional<Day> at = read_day(date);
    if (!at) return std::nullopt;
    // Days in the Gregorian calendar, years counted from March.
    const long y = at->month > 2 ? at->year : at->year - 1;
    const int m = at->month > 2 ? at->month - 3 : at->month + 9;
    return 365 * y + y / 4 - y / 100 + y / 400 + (153 * m + 2) / 5 + at->day - 1 - 719468;
}

std::string days_after(const std::string& date, long days) {
    std::optional<Day> at = read_day(date);
    if (!at || days < 0) return "";
    for (; days > 0; --days) {
        if (++at->day <= days_in(at->year, at->month)) continue;
        at->day = 1;
        if (++at->month <= 12) continue;
        at->month = 1;
        if (++at->year > 9999) return "";
    }
    return fmt::format("{:04}-{:02}-{:02}", at->year, at->month, at->day);
}

std::string long_date(const std::string& date) {
    constexpr const char* months[] = {"January",   "February", "March",    "April",
                                      "May",       "June",     "July",     "August",
                                      "September", "October",  "November", "December"};
    const std::optional<Day> at = read_day(date);
    if (!at) return date;
    return fmt::format("{} {} {}", at->day, months[at->month - 1], at->year);
}

}  // namespace toft
