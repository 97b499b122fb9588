#include "answer/describe.h"

#include "base/text.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

using support::question_of;

bool says(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

TEST(Describe, TheSentenceNamesCableDeviceRcdEarthAndBonds) {
    for (const std::string& name : support::example_names()) {
        const site::Job job = support::example_job(name, support::catalogue());
        for (const SchemeAnswer& s : design(question_of(job)).schemes) {
            SCOPED_TRACE(name + " " + s.key + "\n" + s.sentence);
            const std::string& text = s.sentence;
            EXPECT_TRUE(says(text, significant(s.run.live_mm2, 6) + " mm²"));
            if (s.run.family != "flat twin and earth") {
                EXPECT_TRUE(says(text, std::to_string(s.run.cores) + "-core "));
            }
            EXPECT_TRUE(says(text, significant(s.run.device.rating_a, 6) + " A"));
            EXPECT_TRUE(says(text, s.run.device.kind));
            EXPECT_TRUE(says(text, s.run.fed_from == "spare way" ? "spare way" : "tails"));
            EXPECT_EQ(says(text, "mA RCD"), s.run.rcd && s.run.rcd->delayed);
            EXPECT_EQ(says(text, "own earth electrode"), s.building.earthing == "own electrode");
            EXPECT_EQ(says(text, "insulate"), s.building.earthing == "own electrode");
            for (const BondAnswer& bond : s.building.bonding) EXPECT_TRUE(says(text, bond.part));
            if (s.run.separate_mm2) {
                EXPECT_TRUE(says(text, significant(*s.run.separate_mm2, 6) + " mm² copper"));
            }
            EXPECT_EQ(text.back(), '.');
        }
    }
}

/// A run of one stretch of the usual cable.
RunAnswer run_of(int cores, double live_mm2, const std::string& protective) {
    RunAnswer run;
    run.family = "armoured XLPE copper";
    run.cores = cores;
    run.live_mm2 = live_mm2;
    run.protective_conductor = protective;
    StretchAnswer stretch;
    static_cast<CableAnswer&>(stretch) = run;
    run.stretches = {stretch};
    return run;
}

TEST(Describe, OneOfEachByHand) {
    SchemeAnswer s;
    s.building.earthing = "supply earth";
    s.building.bonding = {{"water pipe", 10, 10}, {"frame", 10, 10}, {"drain", 10, 10}};
    s.run = run_of(3, 10, "core and armour");
    s.run.fed_from = "tails";
    s.run.device = {"BS 88-3", "", "fuse", 32, 16};
    EXPECT_EQ(sentence_of(s),
              "Feed it with 3-core 10 mm² armoured cable from a 32 A BS 88-3 fuse in a "
              "switch-fuse on the tails, behind an isolator; carry the house's earth out through "
              "the core "
              "and armour; bond the water pipe, the frame and the drain there with 10 mm² copper.");
    EXPECT_EQ(short_words(s), "3-core 10 mm², core and armour, supply earth, 32 A fuse, tails");
}

TEST(Describe, WhatBecomesOfACableThatIsThereIsSaid) {
    SchemeAnswer s;
    s.building.earthing = "supply earth";
    s.run = run_of(2, 10, "armour");
    s.run.device = {"BS EN 60898", "B", "breaker", 32, 6};
    s.run.fed_from = "spare way";
    CableAnswer& cable = s.run.stretches.front();
    cable.laid = study::laid_word(study::Laid::kept);
    s.run.device_stays = true;
    EXPECT_TRUE(says(sentence_of(s),
                     "Keep the cable that is there, a 2-core 10 mm² armoured "
                     "cable; feed it from a 32 A type B breaker (6 kA), which "
                     "stays as it is, in a spare way"))
        << sentence_of(s);
    EXPECT_TRUE(says(short_words(s), "keep, 2-core 10 mm²")) << short_words(s);
    EXPECT_TRUE(says(short_words(s), "stays"));
    cable.laid = study::laid_word(study::Laid::doubled);
    cable.parallel = 2;
    s.run.device_stays = false;
    EXPECT_TRUE(says(sentence_of(s), "and lay a second like it beside it; feed both from"))
        << sentence_of(s);
    cable.laid = study::laid_word(study::Laid::anew);
    cable.parallel = 1;
    EXPECT_TRUE(says(sentence_of(s), "Replace the cable that is there: feed it with 2-core"))
        << sentence_of(s);
}

TEST(Describe, AnOwnRodIsSaidWithWhatTheArmourMustNotDo) {
    SchemeAnswer s;
    s.building.earthing = "own electrode";
    s.run = run_of(2, 2.5, "armour");
    s.run.fed_from = "spare way";
    s.run.device = {"BS EN 60898", "B", "breaker", 20, 6};
    s.run.rcd = RcdAnswer{100, "A", true, {"the run"}};
    EXPECT_EQ(
        sentence_of(s),
        "Feed it with 2-core 2.5 mm² armoured cable from a 20 A type B breaker (6 kA) in a "
        "spare way of the house's board, behind a delayed 100 mA RCD; give the building its own "
        "earth electrode; earth the armour at the house only and insulate it at the far end.");
}

TEST(Describe, TheStandingCautionsNameTheEditionTheOperatorAndTheTests) {
    std::string all;
    for (const std::string& caution : standing_cautions(support::demo_book()))
        all += caution + "\n";
    for (const char* words :
         {"competent", "network operator", "Amendment 4", "not seen", "isolate", "invented"}) {
        EXPECT_TRUE(says(all, words)) << words;
    }
}

TEST(Describe, PricesAreSaidToBeInventedAsLongAsAnyIs) {
    price::Book book = support::demo_book();
    ASSERT_EQ(book.invented, book.rows);
    EXPECT_TRUE(says(standing_cautions(book).back(), "invented book"));
    book.name = "my-prices.csv";
    book.invented = 3;
    EXPECT_TRUE(says(standing_cautions(book).back(), "of my-prices.csv 3 are still invented"));
    book.invented = 0;
    EXPECT_FALSE(says(standing_cautions(book).back(), "invented"));
    EXPECT_TRUE(says(standing_cautions(book).back(), "my-prices.csv"));
}

TEST(Describe, ANearMissSaysByHowMuch) {
    search::Dropped dropped;
    EXPECT_EQ(nearest_sentence(dropped), "");
    dropped.nearest =
        support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    dropped.nearest_use = 1.25;
    EXPECT_EQ(nearest_sentence(dropped), "supply-earth/2x10/armour/fuse-32/tails misses by 25 %");
}

/// Who must be told what, of the best scheme.
std::string told(const site::Job& job) {
    std::string all;
    const Answer a = design(question_of(job));
    if (a.schemes.empty()) return all;
    for (const TellAnswer& t : a.schemes.front().tell) {
        all += t.who + " " + t.when + " " + t.why + "\n";
    }
    return all;
}

TEST(Describe, TheOperatorIsToldBeforehandAndBuildingControlAfter) {
    site::Job job = support::plain_job();
    job.intake.looped = site::Answer::no;
    job.intake.demand = support::measured(amperes(40));
    EXPECT_TRUE(says(told(job), "building control"));
    EXPECT_FALSE(says(told(job), "looped"));
    EXPECT_FALSE(says(told(job), "exceed"));
    job.intake.looped = site::Answer::unknown;
    EXPECT_TRUE(says(told(job), "ask whether the supply is looped"));
    job.intake.looped = site::Answer::yes;
    EXPECT_TRUE(says(told(job), "is looped"));
    job.intake.demand = support::measured(amperes(90));  // with 20 A more than the 100 A fuse
    EXPECT_TRUE(says(told(job), "house 90 A (measured) and run 20 A together exceed the 100 A"));
    job.intake.demand = {};
    EXPECT_TRUE(says(told(job), "not known"));
}

TEST(Describe, CautionsOfTheRulesReachTheReader) {
    site::Job job = support::plain_job();
    job.buildings[1].wet_floor = site::Answer::yes;
    for (const SchemeAnswer& s : design(question_of(job)).schemes) {
        std::string all;
        for (const std::string& caution : s.cautions) all += caution + "\n";
        for (const FindingAnswer& f : s.findings) {
            EXPECT_TRUE(f.verdict != rules::Verdict::caution || says(all, f.says)) << s.key;
        }
        if (s.building.earthing == "own electrode") {
            EXPECT_TRUE(says(all, "Label the building")) << s.key;
            EXPECT_TRUE(says(all, "only a test proves it")) << s.key;
        }
    }
}

TEST(Describe, ACombinedEarthTakenOutWarnsOfALostNeutral) {
    site::Job job = support::plain_job();
    for (const site::Earthing system :
         {site::Earthing::tn_c_s, site::Earthing::tn_s, site::Earthing::tt}) {
        job.intake.earthing = system;
        job.intake.ze = {};
        const Answer a = design(question_of(job));
        ASSERT_FALSE(a.schemes.empty());
        for (const SchemeAnswer& s : a.schemes) {
            std::string all;
            for (const std::string& caution : s.cautions) all += caution + "\n";
            EXPECT_EQ(says(all, "loses its neutral"),
                      system == site::Earthing::tn_c_s && s.building.earthing == "supply earth")
                << s.key << "\n"
                << all;
        }
    }
}

TEST(Describe, CircuitsThatCouldNotBeJudgedAreACaution) {
    site::Job job = support::plain_job();
    site::Circuit heater;
    heater.name = "Heater";
    heater.kind = site::CircuitKind::fixed_load;
    heater.load_w = support::measured(1000.0);
    job.buildings[1].circuits = {heater};
    const Answer a = design(question_of(job));
    ASSERT_FALSE(a.schemes.empty());
    std::string all;
    for (const std::string& caution : a.schemes.front().cautions) all += caution + "\n";
    EXPECT_TRUE(says(all, "circuit Heater is not judged")) << all;
    int open = 0;
    for (const FindingAnswer& f : a.schemes.front().findings) {
        if (!f.about_circuits) continue;
        EXPECT_EQ(f.verdict, rules::Verdict::not_known) << f.rule;
        EXPECT_NE(f.rule, "motor-start") << "a heater is no motor";
        EXPECT_NE(f.rule, "voltage-rise") << "nor does it give anything back";
        ++open;
    }
    EXPECT_EQ(open, 5);
    EXPECT_TRUE(a.sound) << "it is a caution, not a condition";
}

TEST(Describe, SpecialPlacesNeedAPersonAndAreNamedOnce) {
    const std::pair<site::Use, std::string> places[] = {
        {site::Use::hot_tub, "pool or tub"},   {site::Use::pool_house, "pool or tub"},
        {site::Use::stable, "animals"},        {site::Use::animal_house, "animals"},
        {site::Use::caravan_pitch, "caravan"}, {site::Use::boat_mooring, "boat"}};
    for (const auto& [use, about] : places) {
        site::Job job = support::plain_job();
        job.buildings[1].use = use;
        const Answer a = design(question_of(job));
        ASSERT_FALSE(a.schemes.empty());
        const auto& said = a.schemes.front().needs_a_person;
        EXPECT_EQ(std::count_if(said.begin(), said.end(),
                                [&, &what = about](const std::string& line) {
                                    return line.rfind(what + ":", 0) == 0;
                                }),
                  1)
            << site::word(use);
        EXPECT_TRUE(std::any_of(said.begin(), said.end(), [](const std::string& line) {
            return says(line, "licensed person");
        })) << site::word(use);
    }
}

TEST(Describe, WithoutAnIsolatorWhoeverMayDrawTheFuseIsTold) {
    site::Job job = support::plain_job();
    job.runs[0].fed_from = site::FedFrom::tails;
    EXPECT_TRUE(says(told(job), "draw the fuse"));
    job.intake.isolator = site::Answer::yes;
    EXPECT_FALSE(says(told(job), "draw the fuse"));
    job.intake.isolator = site::Answer::no;
    EXPECT_TRUE(says(told(job), "book the visit"));
    job.runs[0].fed_from = site::FedFrom::spare_way;
    EXPECT_FALSE(says(told(job), "draw the fuse"));
}

}  // namespace
}  // namespace toft::answer
