// Choices side by side, a column each.

#include "client/choice_table.h"
#include "client/clients_choice.h"

#include "paper/plain_words.h"
#include "paper/written.h"

namespace toft::paper {
namespace {

std::vector<std::string> column(const page::Table& table, std::size_t at) {
    std::vector<std::string> cells;
    for (const page::Row& row : table.rows) cells.push_back(row.cells.at(at));
    return cells;
}

TEST(ChoiceTable, PricesStandInTheOrderTheyAreAddedUp) {
    const auto& one = picture::example("demo");
    const auto choices = choices_of(subject_of(one));
    const page::Table table = price_table(subject_of(one), choices);
    EXPECT_EQ(column(table, 0),
              (std::vector<std::string>{"At the house", "The cable", "In the ground",
                                        "In the building", "Tests and papers", "Before tax", "VAT",
                                        "Total", "May lie between"}));
    for (std::size_t i = 0; i < choices.size(); ++i) {
        const answer::PriceAnswer& p = one.answer.schemes[choices[i].scheme].price;
        std::vector<std::string> expected;
        for (const double part :
             {p.house_end, p.run, p.ground, p.far_end, p.test_and_paper, p.net, p.vat, p.total}) {
            expected.push_back(pence_words(part));
        }
        expected.push_back(pence_words(p.total_low) + " and " + pence_words(p.total_high));
        EXPECT_EQ(column(table, i + 1), expected);
    }
    EXPECT_TRUE(table.rows[table.rows.size() - 2].strong);
}

TEST(ChoiceTable, LostEnergyHasARowWhereItChangesWhatIsCheapest) {
    picture::Example one = copy_of("own-rod-greenhouse");
    const auto choices = choices_of(subject_of(one));
    EXPECT_FALSE(loss_matters(subject_of(one), choices));
    answer::SchemeAnswer& second = one.answer.schemes[choices[1].scheme];
    second.over_years.total = one.answer.schemes[choices[0].scheme].over_years.total - 1;
    EXPECT_TRUE(loss_matters(subject_of(one), choices));
    const auto cells = column(price_table(subject_of(one), choices), 2);
    EXPECT_EQ(cells.back(), pence_words(second.over_years.total));
}

TEST(ChoiceTable, WhatItGivesIsTheDeviceTheLoadAndTheRoomOfTheAnswer) {
    const auto& one = picture::example("demo");
    const auto choices = choices_of(subject_of(one));
    const page::Table table = what_it_is(subject_of(one), choices);
    for (std::size_t i = 0; i < choices.size(); ++i) {
        const answer::SchemeAnswer& scheme = one.answer.schemes[choices[i].scheme];
        const std::string gives = table.rows.back().cells.at(i + 1);
        EXPECT_NE(gives.find("Up to " + significant(scheme.run.device.rating_a, 6) + " amps"),
                  std::string::npos);
        EXPECT_NE(gives.find(significant(scheme.run.figures.design_current_a, 3) + " amps are"),
                  std::string::npos);
        EXPECT_NE(gives.find(percent_left(scheme.headroom)), std::string::npos);
    }
}

TEST(ChoiceTable, WhatAllRestOnIsNotRepeatedInEveryColumn) {
    const auto& demo = picture::example("demo");
    const Asked alike = what_it_asks(subject_of(demo), choices_of(subject_of(demo)));
    ASSERT_EQ(alike.alike.size(), 2u);
    EXPECT_EQ(alike.alike.front().first, "What its safety rests on");
    const auto& rod = picture::example("own-rod-greenhouse");
    const Asked apart = what_it_asks(subject_of(rod), choices_of(subject_of(rod)));
    EXPECT_TRUE(apart.alike.empty());
    EXPECT_EQ(apart.table.rows.front().cells.front(), "What its safety rests on");
}

TEST(ChoiceTable, NoWarningOfAnyChoiceIsLost) {
    for (const char* name : {"own-rod-greenhouse", "demo", "garage-gym-stable"}) {
        const auto& one = picture::example(name);
        const auto choices = choices_of(subject_of(one));
        const std::string words = all_words(clients_choice(subject_of(one)));
        for (const Choice& choice : choices) {
            const answer::SchemeAnswer& scheme = one.answer.schemes[choice.scheme];
            for (const auto* lines :
                 {&scheme.cautions, &scheme.needs_a_person, &scheme.house_work}) {
                for (const std::string& line : *lines) {
                    EXPECT_NE(words.find(capital(line)), std::string::npos) << line;
                }
            }
        }
    }
}

TEST(ChoiceTable, ABuildingThatAChoiceLeavesOutIsSaidToBeNotBuilt) {
    picture::Example one = copy_of("garage-gym-stable");
    const auto choices = choices_of(subject_of(one));
    ASSERT_GE(choices.size(), 2u);
    one.answer.schemes[choices[1].scheme].further.pop_back();
    const page::Table table = what_it_is(subject_of(one), choices);
    bool met = false;
    for (const page::Row& row : table.rows) met = met || row.cells.at(2) == "Not built.";
    EXPECT_TRUE(met);
}

}  // namespace
}  // namespace toft::paper
