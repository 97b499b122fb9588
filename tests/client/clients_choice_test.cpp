#include "client/clients_choice.h"

// The paper on which a client chooses: every figure is the answer's, what is not safe is said in
// front, nothing is promised where nothing is sound.

#include "client/choice_words.h"
#include "base/dates.h"
#include "paper/written.h"
#include "support/random_jobs.h"

#include <cmath>
#include <set>

namespace toft::paper {
namespace {

using answer::PriceAnswer;
using answer::SchemeAnswer;

page::Paper paper_of(const char* name) {
    return clients_choice(subject_of(picture::example(name)));
}

/// Every sum of pounds and pence that stands in the words.
std::set<std::string> sums_in(const std::string& words) {
    std::set<std::string> sums;
    const std::string pound = "£";
    for (std::size_t at = words.find(pound); at != std::string::npos;
         at = words.find(pound, at + 1)) {
        std::size_t end = words.find_first_not_of("0123456789,.", at + pound.size());
        end = std::min(end, words.size());
        std::string sum = words.substr(at, end - at);
        while (sum.back() == '.' || sum.back() == ',') sum.pop_back();
        sums.insert(sum);
    }
    return sums;
}

TEST(ClientsChoice, EveryPriceStandsThereToThePennyAsInTheAnswer) {
    for (const char* name : {"demo", "own-rod-greenhouse", "three-facts", "tt-shed"}) {
        const auto& one = picture::example(name);
        const std::string words = sheet_words(paper_of(name));
        for (const Choice& choice : choices_of(subject_of(one))) {
            const PriceAnswer& p = one.answer.schemes[choice.scheme].price;
            for (const double part : {p.house_end, p.run, p.ground, p.far_end, p.test_and_paper,
                                      p.net, p.vat, p.total}) {
                EXPECT_NE(words.find(pence_words(part)), std::string::npos) << name << part;
            }
        }
    }
}

TEST(ClientsChoice, NoSumStandsThereThatIsNotTheAnswers) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed"}) {
        const auto& one = picture::example(name);
        const auto choices = choices_of(subject_of(one));
        const SchemeAnswer& first = one.answer.schemes[choices.front().scheme];
        std::set<std::string> known;
        for (const Choice& choice : choices) {
            const SchemeAnswer& scheme = one.answer.schemes[choice.scheme];
            const PriceAnswer& p = scheme.price;
            for (const double sum :
                 {p.house_end, p.run, p.ground, p.far_end, p.test_and_paper, p.put_right_first,
                  p.net, p.vat, p.total, p.total_low, p.total_high, scheme.over_years.lost,
                  scheme.over_years.total}) {
                known.insert(pence_words(sum));
            }
            const double more = std::round(100 * p.total) - std::round(100 * first.price.total);
            known.insert(pence_words(std::fabs(more) / 100));
        }
        for (const std::string& sum : sums_in(all_words(paper_of(name)))) {
            if (sum.find('.') == std::string::npos) continue;  // words of the answer, whole pounds
            EXPECT_TRUE(known.count(sum)) << name << " " << sum;
        }
    }
}

TEST(ClientsChoice, WhatMustBePutRightFirstHasItsOwnRowAndIsToldOf) {
    const auto& one = picture::example("three-facts");
    ASSERT_GT(one.answer.schemes.front().price.put_right_first, 0);
    EXPECT_TRUE(reads(paper_of("three-facts"), "Put right first"));
    EXPECT_TRUE(reads(paper_of("three-facts"),
                      pence_words(one.answer.schemes.front().price.put_right_first)));
    EXPECT_FALSE(reads(paper_of("demo"), "Put right first"));
}

TEST(ClientsChoice, InventedPricesAreSaidToBeNoOfferOnTheFirstPage) {
    const auto sheets = page::pages(paper_of("demo"));
    const std::string front = page::run_on(page::read_field({sheets.front()}));
    EXPECT_NE(front.find(squeezed("They are no offer")), std::string::npos);
    EXPECT_TRUE(reads(paper_of("demo"), "Once real prices stand here"));
}

TEST(ClientsChoice, PricesOfABookThatTradesAreSaidPlainly) {
    picture::Example one = copy_of("demo");
    one.answer.cautions = {"Electricity kills."};
    EXPECT_FALSE(prices_invented(one.answer));
    const page::Paper paper = clients_choice(subject_of(one));
    EXPECT_FALSE(reads(paper, "no offer"));
    EXPECT_TRUE(reads(paper, "The prices are good for 30 days"));
}

TEST(ClientsChoice, WhereNothingIsSoundThereIsNoPrice) {
    const page::Paper paper = paper_of("caravan-no-scheme");
    EXPECT_EQ(all_words(paper).find("£"), std::string::npos);
    EXPECT_TRUE(reads(paper, "nothing sound can be built here"));
    EXPECT_TRUE(reads(paper, "What must be found out"));
    EXPECT_FALSE(reads(paper, "Tick one"));
    EXPECT_FALSE(reads(paper, "Signature"));
}

TEST(ClientsChoice, WhatHangsOnOpenFactsIsSaidBeforeAnyPrice) {
    picture::Example one = copy_of("own-rod-greenhouse");
    for (SchemeAnswer& scheme : one.answer.schemes) {
        scheme.conditional_on = {"the electrode reads what the soil promises"};
    }
    const page::Paper paper = clients_choice(subject_of(one));
    std::size_t caution = paper.blocks.size();
    std::size_t table = paper.blocks.size();
    for (std::size_t i = paper.blocks.size(); i-- > 0;) {
        const std::string words = words_of(paper.blocks[i]);
        if (words.find("not yet known to be safe") != std::string::npos) caution = i;
        if (std::holds_alternative<page::Table>(paper.blocks[i])) table = i;
    }
    EXPECT_LT(caution, table);
    EXPECT_NE(words_of(paper.blocks[caution]).find("the electrode reads what the soil promises"),
              std::string::npos);
    EXPECT_TRUE(reads(paper, "and it is not yet known to be safe"));
    EXPECT_TRUE(reads(paper, "Choice 1: the cheapest – not yet known to be safe"));
}

TEST(ClientsChoice, ASingleChoiceSaysWhyThereIsNoSecond) {
    picture::Example one = copy_of("demo");
    one.answer.schemes.resize(1);
    const page::Paper paper = clients_choice(subject_of(one));
    EXPECT_TRUE(reads(paper, "Why there is no second choice"));
    EXPECT_TRUE(reads(paper, "Why ways fell"));
    EXPECT_FALSE(reads(paper, "The difference"));
}

TEST(ClientsChoice, EverySymbolOfTheTradeIsExplained) {
    for (const char* name : {"demo", "own-rod-greenhouse", "three-facts", "tt-shed",
                             "caravan-no-scheme", "sunny-garage"}) {
        page::Paper paper = paper_of(name);
        std::string explained;
        for (const page::Block& block : paper.blocks) {
            const auto* table = std::get_if<page::Table>(&block);
            if (!table || table->columns.size() != 4) continue;
            for (const page::Row& row : table->rows) {
                for (const std::string& cell : row.cells) explained += "|" + cell + "|";
            }
        }
        const std::string all = all_words(paper);
        for (const char* symbol : {"RCD", "RCBO", "Ze",     "mm²",  "kVA", "kA",   "mA",    "A",
                                   "V",   "Ω",    "TN-C-S", "TN-S", "PME", "TT",   "°C",    "kWh",
                                   "VAT", "SPD",  "AFDD",   "Zs",   "CPC", "XLPE", "ESQCR", "BS"}) {
            if (!holds_word(all, symbol)) continue;
            EXPECT_NE(explained.find("|" + std::string(symbol) + "|"), std::string::npos)
                << name << " " << symbol;
        }
    }
}

TEST(ClientsChoice, WhatIsAssumedAndLeftOutIsSaid) {
    const auto& one = picture::example("demo");
    const page::Paper paper = paper_of("demo");
    const std::string words = all_words(paper);
    for (const std::string& line : one.answer.assumed) {
        EXPECT_NE(words.find(line.substr(1)), std::string::npos) << line;
    }
    for (const tables::Notice& notice : support::catalogue().handover.notices) {
        if (notice.list != "excluded") continue;
        EXPECT_NE(words.find(notice.says), std::string::npos) << notice.says;
        EXPECT_EQ(notice.citation->basis, Basis::common_practice);
    }
}

TEST(ClientsChoice, TheOfferStandsForTheDaysOfTheTable) {
    const auto days = static_cast<long>(support::catalogue().handover.terms.offer_days.value);
    EXPECT_TRUE(reads(paper_of("demo"), long_date(days_after("2026-11-29", days))));
    Subject s = subject_of(picture::example("demo"));
    s.date = "someday";
    EXPECT_TRUE(reads(clients_choice(s), "days from the day they are given"));
}

TEST(ClientsChoice, ThereIsRoomToChooseAndSign) {
    const page::Paper paper = paper_of("demo");
    for (const char* words : {"Tick one", "None of them", "Your name", "Signature", "Date"}) {
        EXPECT_TRUE(reads(paper, words)) << words;
    }
}

TEST(ClientsChoice, WhatIsSignedStandsOnThePageOfTheSignature) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed", "three-facts",
                             "garage-gym-stable", "sunny-garage"}) {
        std::set<std::size_t> sheets;
        int met = 0;
        for (const page::Read& one : page::read_field(page::pages(paper_of(name)))) {
            for (const char* words :
                 {"Your decision", "Tick one", "Signature", "For the firm: name, signature"}) {
                if (one.words != words) continue;
                sheets.insert(one.sheet);
                ++met;
            }
        }
        EXPECT_EQ(met, 4) << name;
        EXPECT_EQ(sheets.size(), 1u) << name;
    }
}

TEST(ClientsChoice, ATreeIsToldBuildingByBuilding) {
    const auto& one = picture::example("garage-gym-stable");
    const page::Paper paper = paper_of("garage-gym-stable");
    std::vector<std::string> rows;
    for (const page::Block& block : paper.blocks) {
        const auto* table = std::get_if<page::Table>(&block);
        if (!table) continue;
        for (const page::Row& row : table->rows) rows.push_back(row.cells.front());
    }
    for (const char* name : {"Garage", "Gym", "Stable", "In the buildings"}) {
        EXPECT_EQ(std::count(rows.begin(), rows.end(), name), 1) << name;
    }
    for (const answer::SchemeAnswer* part : runs_of(subject_of(one))) {
        EXPECT_TRUE(reads(paper, "Up to " + significant(part->run.device.rating_a, 6) +
                                     " amps; about " +
                                     significant(part->run.figures.design_current_a, 3)));
    }
    EXPECT_TRUE(reads(paper, pence_words(one.answer.schemes.front().price.total)));
    expect_in_the_field(paper);
}

TEST(ClientsChoice, HardNamesStayOnTheSheet) {
    for (const std::string& name : hard_names()) {
        expect_in_the_field(clients_choice(subject_of(renamed("own-rod-greenhouse", name))));
    }
    expect_in_the_field(paper_of("caravan-no-scheme"));
}

TEST(ClientsChoice, AnyJobGivesPapersThatStayOnTheirSheets) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        picture::Example one;
        one.job = support::random_demand_job(seed);
        one.answer = picture::designed(one.job);
        const Subject s = subject_of(one);
        expect_in_the_field(clients_choice(s));
        if (one.answer.schemes.empty()) continue;
        expect_in_the_field(users_sheet(s));
        expect_in_the_field(labels(s));
    }
}

}  // namespace
}  // namespace toft::paper
