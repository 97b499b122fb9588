#include "paper/run_board.h"
#include "parts/device_words.h"

#include "base/text.h"
#include "paper/outgoing.h"
#include "paper/sheets.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(RunBoard, EveryCircuitHasARowWithTheAnswersFigures) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        SCOPED_TRACE(name);
        const auto rows = ways_table(sheet).rows;
        for (const answer::CircuitAnswer& c : sheet.building().circuits) {
            const auto& cells = rows.at(static_cast<std::size_t>(c.number - 1)).cells;
            EXPECT_EQ(cells[0], std::to_string(c.number));
            EXPECT_EQ(cells[1].rfind(c.name, 0), 0U);
            EXPECT_NE(cells[2].find(significant(c.device.rating_a, 6) + " A"), std::string::npos);
            EXPECT_NE(cells[3].find(significant(c.rcd_ma, 4) + " mA"), std::string::npos);
            EXPECT_NE(cells[4].find(significant(c.live_mm2, 6) + " mm²"), std::string::npos);
            EXPECT_EQ(cells[5], significant(c.length_m, 3) + " m");
        }
        EXPECT_GE(rows.size(), sheet.stage.far->circuits.size());
    });
}

TEST(RunBoard, AWayThatFeedsAnotherBuildingHasARowWithItsDevice) {
    int seen = 0;
    for_each_sheet([&](const std::string& name, const RunSheet& sheet) {
        SCOPED_TRACE(name);
        const auto feeds = outgoing(sheet.subject, sheet.building().id);
        const auto rows = ways_table(sheet).rows;
        std::size_t out = 0;
        for (const auto& row : rows) {
            if (row.cells[0] != "out") continue;
            ASSERT_LT(out, feeds.size());
            const answer::RunAnswer& run = feeds[out]->run;
            EXPECT_EQ(row.cells[1], "feeds " + feeds[out]->building.name);
            EXPECT_NE(row.cells[2].find(significant(run.device.rating_a, 4) + " A"),
                      std::string::npos);
            EXPECT_EQ(row.cells[3], run.rcd ? parts::rcd_words(*run.rcd) : "none");
            ++out;
        }
        EXPECT_EQ(out, feeds.size());
        seen += static_cast<int>(out);
    });
    EXPECT_GE(seen, 2);
}

TEST(RunBoard, TheRodBearsTheReadingItWasDesignedWith) {
    int seen = 0;
    for_each_sheet([&](const std::string& name, const RunSheet& sheet) {
        const std::string words = lines_of(board_lines(sheet));
        EXPECT_EQ(words.find("Earth rod") != std::string::npos,
                  sheet.building().electrode.has_value())
            << name;
        if (!sheet.building().electrode) return;
        EXPECT_NE(words.find("may read at most " +
                             significant(sheet.building().electrode->largest_ohm, 3) + " Ω"),
                  std::string::npos);
        const double least = support::catalogue().limits.separate_buried.value.number();
        EXPECT_NE(words.find("at least " + significant(least, 6) + " mm²"), std::string::npos);
        ++seen;
    });
    EXPECT_GE(seen, 1);
}

TEST(RunBoard, ABoardOnItsOwnEarthKeepsTheArmourOffItsMetal) {
    const Example& house = example("own-rod-greenhouse");
    const Subject subject = sheet_subject(house);
    const auto sheet = run_sheet(subject, *runs_of(subject).front());
    EXPECT_NE(lines_of(board_lines(sheet)).find("board of insulating material"), std::string::npos);
    EXPECT_EQ(board_table(sheet).rows.size(), board_lines(sheet).size());
}

TEST(RunBoard, FortyWaysAreFortyRowsWithTheirCautions) {
    const Example one = board::many_ways("demo", 40);
    const Subject subject = sheet_subject(one);
    const RunSheet sheet = run_sheet(subject, *runs_of(subject).front());
    const auto rows = ways_table(sheet).rows;
    ASSERT_EQ(rows.size(), 40U);
    for (int i = 0; i < 40; ++i) {
        EXPECT_EQ(rows[static_cast<std::size_t>(i)].cells[1], board::long_name(i + 1));
    }
    EXPECT_EQ(rows[2].cells[4], "not known: not designed");
    EXPECT_FALSE(ways_cautions(sheet).empty());
}

}  // namespace
}  // namespace toft::paper
