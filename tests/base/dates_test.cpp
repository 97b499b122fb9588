// Dates of papers, held against the calendar of the standard library.

#include "base/dates.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>
#include <cstdio>

namespace toft {
namespace {

std::string written(const std::chrono::year_month_day& day) {
    char text[32];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return text;
}

TEST(Dates, FebruaryHas29DaysInLeapYearsOfTheGregorianCalendar) {
    EXPECT_EQ(days_after("2024-02-28", 1), "2024-02-29");
    EXPECT_EQ(days_after("2026-02-28", 1), "2026-03-01");
    EXPECT_EQ(days_after("1900-02-28", 1), "1900-03-01");
    EXPECT_EQ(days_after("2000-02-28", 1), "2000-02-29");
    EXPECT_EQ(days_after("2026-12-31", 1), "2027-01-01");
    EXPECT_EQ(days_after("2026-11-29", 0), "2026-11-29");
}

TEST(Dates, WhatIsNoDateHasNoDayAfterIt) {
    for (const char* no : {"", "2026", "2026-13-01", "2026-02-30", "26-11-29", "2026/11/29",
                           "2026-00-10", "2026-1x-10", "0000-01-01", "9999-12-31"}) {
        EXPECT_EQ(days_after(no, 1), "") << no;
    }
    EXPECT_EQ(days_after("2026-11-29", -1), "");
}

TEST(Dates, AreSaidAsPeopleSayThem) {
    EXPECT_EQ(long_date("2026-11-09"), "9 November 2026");
    EXPECT_EQ(long_date("soon"), "soon");
}

RC_GTEST_PROP(Dates, FollowTheCalendarOfTheStandardLibrary, ()) {
    using namespace std::chrono;
    const auto first = sys_days{year{1} / 1 / 1} + days{*rc::gen::inRange(0, 3500000)};
    const int more = *rc::gen::inRange(0, 800);
    RC_ASSERT(days_after(written(first), more) == written(first + days{more}));
}

TEST(Dates, DaysAreCountedAsTheStandardLibraryCountsThem) {
    using namespace std::chrono;
    for (const auto& day : {2026y / 11 / 29, 2024y / 2 / 29, 1970y / 1 / 1, 1969y / 12 / 31,
                            2000y / 3 / 1, 1900y / 2 / 28}) {
        EXPECT_EQ(days_since_1970(written(day)), sys_days(day).time_since_epoch().count());
    }
    EXPECT_FALSE(days_since_1970("2026-02-31"));
}

}  // namespace
}  // namespace toft
