#include "paper/work_order.h"

#include "paper/sheets.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::paper {
namespace {

std::size_t place(const std::vector<std::string>& steps, const std::string& words) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (steps[i].find(words) != std::string::npos) return i;
    }
    return steps.size();
}

bool said_in(const std::vector<std::string>& lines, const std::string& words) {
    return place(lines, words) < lines.size();
}

TEST(WorkOrder, NothingIsJoinedAtTheNearEndBeforeItIsProvedDead) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        SCOPED_TRACE(name);
        const auto steps = order_of_work(sheet);
        const std::size_t locked = std::min(place(steps, "Lock it"), place(steps, "lock"));
        const std::size_t proved = place(steps, "Prove the tester");
        const std::size_t made_off = place(steps, "Make off the near end last");
        ASSERT_LT(made_off, steps.size());
        EXPECT_LT(locked, proved);
        EXPECT_LT(proved, made_off);
        EXPECT_LT(made_off, place(steps, "switch on"));
    });
}

TEST(WorkOrder, ACableThatIsThereIsProvedDeadBeforeAnyWork) {
    const Example& old = example("old-garage-cable");
    const Subject subject = sheet_subject(old);
    const auto steps = order_of_work(run_sheet(subject, *runs_of(subject).front()));
    EXPECT_EQ(place(steps, "lock"), 0U);
    EXPECT_EQ(place(steps, "Prove the tester"), 1U);
    EXPECT_LT(place(steps, "was live until now"), place(steps, "dig"));
}

TEST(WorkOrder, TheOperatorsFuseIsNotYoursWhereTheRunLeavesTheHouse) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        const bool house = sheet.run().feeder.empty();
        EXPECT_EQ(danger_words(sheet).find("operator's fuse") != std::string::npos, house) << name;
        const bool tails = sheet.run().fed_from != "spare way";
        EXPECT_EQ(said_in(order_of_work(sheet), "Make the tails dead"), tails) << name;
        EXPECT_EQ(said_in(order_of_work(sheet), "Switch off and lock the device that feeds"),
                  !house)
            << name;
    });
}

TEST(WorkOrder, ASourceAtTheFarEndIsSwitchedOffToo) {
    const Example& sunny = example("sunny-garage");
    const Subject subject = sheet_subject(sunny);
    const RunSheet sheet = run_sheet(subject, *runs_of(subject).front());
    EXPECT_TRUE(said_in(order_of_work(sheet), "what feeds the far board"));
    EXPECT_NE(danger_words(sheet).find("fed from its own side"), std::string::npos);
    const auto labels = run_labels(sheet);
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const RunLabel& label) {
        return label.words.find("isolate both") != std::string::npos;
    }));
}

TEST(WorkOrder, TheHousesWorkAndTheOpenFactsComeFirst) {
    Example one = example("three-facts");
    answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
    ASSERT_FALSE(scheme.house_work.empty());
    scheme.conditional_on = {one.answer.unknowns.at(1).fact};
    const Subject subject = sheet_subject(one);
    const auto first = first_of_all(run_sheet(subject, *runs_of(subject).front()));
    EXPECT_TRUE(said_in(first, scheme.house_work.front()));
    EXPECT_TRUE(said_in(first, "Left undone until found out: " + one.answer.unknowns[1].says));
    for (const answer::TellAnswer& tell : scheme.tell) {
        EXPECT_EQ(said_in(first, tell.why), tell.when != "after") << tell.why;
    }
}

TEST(WorkOrder, AnIsolatedArmourIsLabelledAndTwoEarthsAreADanger) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        const answer::StretchAnswer& last = sheet.run().stretches.back();
        const bool isolated = last.armoured && !last.armour_far;
        const auto labels = run_labels(sheet);
        EXPECT_EQ(std::any_of(labels.begin(), labels.end(),
                              [](const RunLabel& label) {
                                  return label.words.find("insulated here on purpose") !=
                                         std::string::npos;
                              }),
                  isolated)
            << name;
        EXPECT_EQ(danger_words(sheet).find("two earths") != std::string::npos,
                  isolated && sheet.building().electrode.has_value())
            << name;
    });
}

TEST(WorkOrder, ASharedTrenchIsNamedOnEachRunInIt) {
    Example one = example("garage-gym-stable");
    answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
    scheme.trenches = {{"lane", "garage-feed", {"gym-feed"}, "gym-feed shares the trench lane"}};
    const Subject subject = sheet_subject(one);
    for (const answer::SchemeAnswer* part : runs_of(subject)) {
        EXPECT_EQ(trench_words(run_sheet(subject, *part)).size(),
                  part->run.id == "stable-feed" ? 0U : 1U);
    }
}

}  // namespace
}  // namespace toft::paper
