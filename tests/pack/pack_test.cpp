// Papers as files, read back with an outside reader: pdftotext and pdfinfo of Poppler.

#include "pack/pack.h"
#include "pack/lists.h"

#include "base/text.h"
#include "pack/reading.h"
#include "paper/subjects.h"
#include "print/fonts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::pack {
namespace {

using paper::made;
using paper::Made;

Pack packed(const Made& one) {
    paper::Subject subject = one.subject();
    subject.workings =
        paper::workings_of(support::question_of(one.job), one.answer.schemes.front());
    std::vector<const paper::Kind*> kinds;
    for (const paper::Kind& kind : paper::kinds()) kinds.push_back(&kind);
    return support::need(pack_of(subject, kinds, support::fonts()), "the pack");
}

const Pack& packed(const std::string& name) {
    static std::map<std::string, Pack> all;
    const auto found = all.find(name);
    if (found != all.end()) return found->second;
    return all.emplace(name, packed(made(name))).first->second;
}

const File& file(const Pack& pack, const std::string& name) {
    for (const File& one : pack.files) {
        if (one.name == name) return one;
    }
    ADD_FAILURE() << "no file " << name;
    return pack.files.front();
}

TEST(Pack, HoldsEveryPaperAloneAndAllTogether) {
    const Pack& pack = packed("demo");
    ASSERT_EQ(pack.files.size(), paper::kinds().size() + 1);
    std::size_t sheets = 0;
    for (std::size_t i = 0; i + 1 < pack.files.size(); ++i) {
        EXPECT_EQ(pack.files[i].name, std::string(paper::kinds()[i].file) + ".pdf");
        EXPECT_EQ(pages_in(pack.files[i].bytes), pack.files[i].pages);
        sheets += pack.files[i].pages;
    }
    const File& whole = file(pack, whole_name);
    EXPECT_EQ(pages_in(whole.bytes), whole.pages);
    EXPECT_EQ(whole.pages, sheets + 1);
    const std::string words = text_of_pdf(whole.bytes);
    for (const paper::Kind& kind : paper::kinds()) {
        EXPECT_NE(words.find(kind.name), std::string::npos) << kind.name;
    }
    const std::string last = std::to_string(whole.pages);
    EXPECT_NE(words.find("sheet " + last + " of " + last), std::string::npos);
}

TEST(Pack, TheSameJobAndDateGiveTheSameBytes) {
    const Pack again = packed(made("demo"));
    const Pack& first = packed("demo");
    ASSERT_EQ(again.files.size(), first.files.size());
    for (std::size_t i = 0; i < again.files.size(); ++i) {
        EXPECT_EQ(again.files[i].bytes == first.files[i].bytes, true) << again.files[i].name;
    }
}

TEST(Pack, EveryPageSaysWhichOfHowManyItIsAndWhoDecides) {
    for (const File& one : packed("garage-gym-stable").files) {
        if (one.name == whole_name) continue;
        const std::string words = text_of_pdf(one.bytes);
        for (std::size_t page = 1; page <= one.pages; ++page) {
            const std::string says = fmt::format("page {} of {}", page, one.pages);
            EXPECT_NE(words.find(says), std::string::npos) << one.name << " " << says;
        }
        EXPECT_EQ(occurrences(words, "the local code, the network operator and a competent"),
                  one.pages)
            << one.name;
    }
}

TEST(Pack, FontsAreEmbedded) {
    for (const File& one : packed("demo").files) {
        EXPECT_TRUE(all_fonts_embedded(one.bytes)) << one.name;
    }
}

TEST(Pack, NoCharacterOfTheExamplesIsMissingFromTheFonts) {
    for (const char* name : {"demo", "own-rod-greenhouse", "garage-gym-stable"}) {
        EXPECT_TRUE(packed(name).missing.empty()) << name;
    }
}

TEST(Pack, CharactersThatTheFontsLackAreNamed) {
    Made one = paper::crowded(1, "納屋 barn");
    const Pack pack = packed(one);
    EXPECT_NE(pack.missing.find(U'納'), std::u32string::npos);
    EXPECT_NE(pack.missing.find(U'屋'), std::u32string::npos);
    EXPECT_EQ(pack.missing.find(U'b'), std::u32string::npos);
}

TEST(Pack, FortyCircuitsWithLongNamesLoseNoRow) {
    const std::string name = "Long threshing barn behind the orchard wall by the lane";
    const Pack pack = packed(paper::crowded(40, name));
    const std::string record = squeezed(cells_of_pdf(file(pack, "design-record.pdf").bytes));
    const std::string test = squeezed(cells_of_pdf(file(pack, "test-sheet.pdf").bytes));
    for (int i = 1; i <= 40; ++i) {
        const std::string one = squeezed(name + " " + std::to_string(i) + ", R1+R2");
        EXPECT_NE(test.find(one), std::string::npos) << i;
    }
    EXPECT_NE(record.find("circuit40,"), std::string::npos);
}

/// The figures of the answer that a paper must show, as it writes them.
std::vector<std::string> figures_of(const answer::SchemeAnswer& part) {
    const auto& f = part.run.figures;
    return {significant(f.length_m, 4) + " m",
            significant(f.design_current_a, 4) + " A",
            significant(f.rating_a, 4) + " A",
            significant(f.voltage_drop_percent, 4) + " %",
            significant(f.voltage_drop_total_percent, 4) + " %",
            significant(f.loop_impedance_far_ohm, 4) + " Ω",
            significant(f.loop_impedance_test_limit_ohm, 4) + " Ω",
            significant(f.fault_current_near_ka, 4) + " kA",
            significant(f.fault_current_far_ka, 4) + " kA",
            significant(f.earth_fault_current_far_a, 4) + " A",
            significant(f.r1_plus_r2_20c_ohm, 4) + " Ω"};
}

TEST(Pack, TheRecordsFiguresAreTheAnswers) {
    for (const char* name : {"demo", "own-rod-greenhouse", "garage-gym-stable"}) {
        const paper::Subject subject = made(name).subject();
        const std::string words = text_of_pdf(file(packed(name), "design-record.pdf").bytes);
        for (const auto* part : paper::runs_of(subject)) {
            for (const std::string& figure : figures_of(*part)) {
                EXPECT_NE(words.find(figure), std::string::npos) << name << ": " << figure;
            }
        }
        EXPECT_NE(words.find(paper::pence_words(made(name).answer.schemes.front().price.total)),
                  std::string::npos)
            << name;
    }
}

TEST(Pack, NoFigureOnASheetIsFoundNowhereInJobAnswerOrTables) {
    for (const char* name : {"demo", "own-rod-greenhouse", "garage-gym-stable", "tt-shed"}) {
        for (const char* paper : {"test-sheet.pdf", "installers-sheet.pdf"}) {
            const std::string words = text_of_pdf(file(packed(name), paper).bytes);
            Known known(name, made(name).job, made(name).answer);
            known.take(support::catalogue().limits.separate_buried.value.number());
            for (const Shown& figure : figures_with_units(words)) {
                EXPECT_TRUE(known.has(figure)) << name << " " << paper << ": " << figure.text;
            }
            EXPECT_GT(figures_with_units(words).size(), 10u) << name << " " << paper;
        }
    }
}

/// The five parts of a scheme's price, what is put right first, net, tax and total, in pence.
std::vector<long> sums_of(const answer::PriceAnswer& p) {
    std::vector<long> all;
    for (const double sum : {p.house_end, p.run, p.ground, p.far_end, p.test_and_paper,
                             p.put_right_first, p.net, p.vat, p.total}) {
        all.push_back(std::lround(100 * sum));
    }
    return all;
}

TEST(Pack, TheClientSeesTheAnswersPriceToThePennyAndItsPartsAddUp) {
    for (const char* name : {"demo", "own-rod-greenhouse", "garage-gym-stable", "tt-shed"}) {
        const auto shown = sums_in(text_of_pdf(file(packed(name), "clients-choice.pdf").bytes));
        const answer::PriceAnswer& price = made(name).answer.schemes.front().price;
        const std::vector<long> sums = sums_of(price);
        for (const long sum : sums) {
            if (sum == 0) continue;
            EXPECT_NE(std::find(shown.begin(), shown.end(), sum), shown.end())
                << name << " " << sum;
        }
        EXPECT_EQ(sums[0] + sums[1] + sums[2] + sums[3] + sums[4] + sums[5], sums[6]) << name;
        EXPECT_EQ(sums[6] + sums[7], sums[8]) << name;
    }
}

TEST(Pack, SearchBillAndListAgreeToThePenny) {
    for (const char* name : {"demo", "own-rod-greenhouse", "garage-gym-stable", "tt-shed"}) {
        const paper::Subject subject = made(name).subject();
        long bill = 0, materials = 0;
        for (const auto* part : paper::runs_of(subject)) {
            for (const price::BillLine& line : part->bill) {
                const long pence = std::lround(100 * line.amount.number());
                bill += pence;
                if (line.sort == price::Sort::material) materials += pence;
            }
        }
        EXPECT_EQ(bill, std::lround(100 * made(name).answer.schemes.front().price.net)) << name;
        const auto lists =
            support::need(lists_of(subject, ware::Prices::with), "the list of materials");
        EXPECT_EQ(last_column_in_pence(lists.front().bytes), materials) << name;
        EXPECT_EQ(lists.back().bytes.substr(0, 2), "PK") << name;
    }
}

TEST(Pack, WhatHangsOnAnOpenFactIsSaidInEveryFileSomebodyCouldActOn) {
    Made one = made("demo");
    one.answer.schemes.front().conditional_on = {"the pipe is plastic where it enters"};
    const Pack pack = packed(one);
    for (const File& file : pack.files) {
        const std::string words = squeezed(cells_of_pdf(file.bytes));
        EXPECT_NE(words.find(squeezed("the pipe is plastic where it enters")), std::string::npos)
            << file.name;
    }
    const auto lists = support::need(lists_of(one.subject(), ware::Prices::without), "lists");
    EXPECT_EQ(occurrences(lists.front().bytes, "NOT YET KNOWN TO BE SAFE") + 1,
              occurrences(lists.front().bytes, "\r\n"));
    for (const File& file : support::need(drawings_of(one.subject()), "drawings")) {
        EXPECT_NE(file.bytes.find("NOT YET KNOWN TO BE SAFE: do not dig"), std::string::npos);
    }
}

TEST(Pack, PlanAndTrenchesComeInMetres) {
    const auto drawings = support::need(drawings_of(made("demo").subject()), "the drawings");
    ASSERT_EQ(drawings.size(), 2u);
    for (const File& one : drawings) {
        EXPECT_NE(one.bytes.find("AC1009"), std::string::npos) << one.name;
        EXPECT_NE(one.bytes.find("EOF"), std::string::npos) << one.name;
    }
}

}  // namespace
}  // namespace toft::pack
