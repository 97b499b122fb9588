#include "answer/answer.h"

#include "answer/recorded.h"
#include "support/brute_force.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace toft::answer {
namespace {

using support::question_of;

/// All that concern the run, in the order of the rulebook.
void expect_findings(const search::Evaluation& e, const SchemeAnswer& s, bool all_circuits) {
    std::size_t said = 0;
    for (const auto& finding : e.findings) {
        if (!finding.concerns) continue;
        ASSERT_LT(said, s.findings.size());
        const FindingAnswer& one = s.findings[said++];
        EXPECT_EQ(one.rule, finding.rule->name);
        const bool shown = !finding.rule->only_cautions || std::isfinite(finding.use);
        EXPECT_EQ(one.use.has_value(), finding.limited && shown);
        if (finding.limited && std::isfinite(finding.use)) {
            EXPECT_EQ(*one.use, finding.use);
        }
        const bool fails = finding.verdict == rules::Verdict::fails;
        const bool unjudged = one.about_circuits && !finding.limited && !all_circuits;
        EXPECT_EQ(one.verdict, fails || unjudged ? rules::Verdict::not_known : finding.verdict);
    }
    EXPECT_EQ(said, s.findings.size());
}

/// Every figure of a scheme of the answer is the silent evaluation's.
void expect_silent_figures(const site::Job& job, const SchemeAnswer& s) {
    Silent silent;
    const auto setting = study::prepare(silent, support::catalogue(), job,
                                        study::RunAt{0, s.scheme.phases}, study::Corner{});
    search::Evaluation e;
    search::evaluate(setting, s.scheme, e);
    const auto& f = e.figures;
    const FigureAnswers& a = s.run.figures;
    EXPECT_EQ(a.length_m, setting.length_most.number());
    EXPECT_EQ(a.design_current_a, setting.ib.number());
    EXPECT_EQ(a.rating_a, f.iz.number());
    EXPECT_EQ(a.governing_leg, f.governing_leg);
    EXPECT_EQ(a.voltage_drop_percent, f.drop_percent);
    EXPECT_EQ(a.loop_impedance_far_ohm, f.zs_far.number());
    EXPECT_DOUBLE_EQ(a.fault_current_near_ka, setting.supply.pscc.number() / 1000);
    const Amperes far = s.scheme.phases == 3 ? f.lll_far : f.ln_far;
    EXPECT_DOUBLE_EQ(a.fault_current_far_ka, far.number() / 1000);
    EXPECT_EQ(a.earth_fault_current_far_a, f.le_least.number());
    EXPECT_EQ(a.r1_plus_r2_20c_ohm, f.r1_r2_cold.number());
    EXPECT_EQ(a.near_line_neutral_a.smallest, f.ln_near_least.number());
    EXPECT_EQ(a.near_line_neutral_a.largest, f.ln_near.number());
    EXPECT_EQ(a.near_line_earth_a.smallest, f.le_near_least.number());
    EXPECT_EQ(a.near_line_earth_a.largest, f.le_near.number());
    EXPECT_EQ(a.far_line_neutral_a.smallest, f.ln_least.number());
    EXPECT_EQ(a.far_line_neutral_a.largest, f.ln_far.number());
    EXPECT_EQ(a.far_line_earth_a.smallest, f.le_least.number());
    EXPECT_EQ(a.far_line_earth_a.largest, f.le_far.number());
    if (a.disconnection_s) {
        EXPECT_EQ(*a.disconnection_s, f.disconnection.number());
    } else {
        EXPECT_TRUE(std::isinf(f.disconnection.number()));
    }
    ASSERT_EQ(a.factors.size(), setting.legs.size());
    for (std::size_t i = 0; i < a.factors.size(); ++i) {
        const auto& x =
            study::factors_of(setting.legs[i], s.scheme.stretch[setting.legs[i].stretch]);
        EXPECT_EQ(a.factors[i].ca, x.ca);
        EXPECT_EQ(a.factors[i].cg, x.cg);
        EXPECT_EQ(a.factors[i].ci, x.ci);
        EXPECT_EQ(a.factors[i].cs, x.cs);
        EXPECT_EQ(a.factors[i].cd, x.cd);
        EXPECT_EQ(a.factors[i].cc, x.cc);
    }
    EXPECT_EQ(s.headroom, e.headroom);
    EXPECT_EQ(s.price.total, support::brute_price(support::demo_book(), setting, e, s.scheme));
    expect_findings(e, s, setting.circuits.left_out.empty());
}

TEST(Design, FiguresOfEveryExampleAreTheSilentEvaluations) {
    for (const std::string& name : support::example_names()) {
        const site::Job job = support::example_job(name, support::catalogue());
        for (const SchemeAnswer& s : design(question_of(job)).schemes) {
            SCOPED_TRACE(name + " " + s.key);
            expect_silent_figures(job, s);
        }
    }
}

TEST(Design, FiguresOfRandomJobsAreTheSilentEvaluations) {
    int schemes = 0;
    for (unsigned seed = 900; seed < 910; ++seed) {
        const site::Job job = support::random_job(seed);
        for (const SchemeAnswer& s : design(question_of(job)).schemes) {
            SCOPED_TRACE(std::to_string(seed) + " " + s.key);
            expect_silent_figures(job, s);
            ++schemes;
        }
    }
    EXPECT_GT(schemes, 20);
}

TEST(Design, PricesAddUp) {
    const site::Job job = support::example_job("demo", support::catalogue());
    for (const SchemeAnswer& s : design(question_of(job)).schemes) {
        const PriceAnswer& p = s.price;
        EXPECT_NEAR(
            p.net,
            p.house_end + p.run + p.ground + p.far_end + p.test_and_paper + p.put_right_first,
            1e-9);
        EXPECT_NEAR(p.total, p.net + p.vat, 1e-9);
    }
}

TEST(Design, RanksCountFromOneAndTheSearchIsTold) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Answer a = design(question_of(job));
    ASSERT_TRUE(a.sound);
    for (std::size_t i = 0; i < a.schemes.size(); ++i) {
        EXPECT_EQ(a.schemes[i].rank, static_cast<int>(i) + 1);
        EXPECT_EQ(a.schemes[i].key, study::scheme_key(a.schemes[i].scheme));
    }
    long dropped = 0;
    for (const DroppedAnswer& d : a.dropped) {
        dropped += d.count;
        EXPECT_FALSE(d.title.empty()) << d.rule;
        EXPECT_EQ(d.nearest_key.empty(), d.nearest_says.empty()) << d.rule;
    }
    EXPECT_EQ(a.search.sound + a.search.conditional + dropped + a.search.set_aside,
              a.search.candidates);
    EXPECT_GE(a.search.evaluated, a.search.sound + a.search.conditional);
    EXPECT_GT(a.search.set_aside, 0);
    EXPECT_FALSE(only_conditional(a));
}

TEST(Design, AnythingAnAnswerRestsOnIsInItsSourcesOnce) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Answer a = design(question_of(job));
    std::set<std::string> seen;
    for (const SourceAnswer& s : a.sources) {
        EXPECT_TRUE(seen.insert(s.key + "/" + s.basis).second) << s.key;
        EXPECT_FALSE(s.title.empty()) << s.key;
    }
    const Question q = question_of(job);
    const Recorded recorded(q, a.schemes.front().scheme);
    for (const Citation* c : recorded.citations()) {
        EXPECT_TRUE(seen.count(c->source + "/" + basis_word(c->basis))) << c->source;
    }
}

TEST(Design, ACaravanOnACombinedSupplyHasNoSchemeOnThatEarth) {
    const site::Job job = support::example_job("caravan-no-scheme", support::catalogue());
    const Answer a = design(question_of(job));
    EXPECT_FALSE(a.sound);
    EXPECT_TRUE(a.schemes.empty());
    EXPECT_FALSE(only_conditional(a));
    bool told = false;
    for (const DroppedAnswer& d : a.dropped) told = told || d.rule == "earthing-choice";
    EXPECT_TRUE(told);
}

TEST(Design, ThreeFactsAreAnsweredWithWhatTheyHangOn) {
    const site::Job job = support::example_job("three-facts", support::catalogue());
    const Answer a = design(question_of(job));
    EXPECT_FALSE(a.unknowns.empty());
    EXPECT_FALSE(a.assumed.empty());
    for (const SchemeAnswer& s : a.schemes) {
        bool unsure = false;
        for (const FindingAnswer& f : s.findings) {
            EXPECT_NE(f.verdict, rules::Verdict::fails) << s.key << " " << f.rule;
            unsure = unsure || f.verdict == rules::Verdict::not_known;
        }
        EXPECT_EQ(unsure, !s.conditional_on.empty()) << s.key;
    }
}

TEST(Design, ABondIsAtLeastWhatIsRequiredAndEveryPartIsNamed) {
    site::Job job = support::example_job("demo", support::catalogue());
    for (double neutral : {25.0, 50.0, 95.0}) {
        job.intake.supply_neutral = support::measured(square_millimetres(neutral));
        const double required = neutral <= 35 ? 10 : neutral <= 50 ? 16 : 25;
        const Answer a = design(question_of(job));
        ASSERT_FALSE(a.schemes.empty());
        for (const SchemeAnswer& s : a.schemes) {
            if (s.building.earthing != "supply earth") continue;
            ASSERT_FALSE(s.building.bonding.empty());
            for (const BondAnswer& bond : s.building.bonding) {
                EXPECT_EQ(bond.required_mm2, required) << s.key;
                EXPECT_GE(bond.size_mm2, bond.required_mm2) << s.key;
                EXPECT_FALSE(bond.part.empty());
            }
            ASSERT_TRUE(s.run.bond_equivalent_mm2);
            EXPECT_GE(*s.run.bond_equivalent_mm2, required);
        }
    }
}

TEST(Design, ArmourIsEarthedAtTheHouseAlwaysAndFarAwayOnlyWhereItServes) {
    for (const std::string& name : support::example_names()) {
        const site::Job job = support::example_job(name, support::catalogue());
        for (const SchemeAnswer& s : design(question_of(job)).schemes) {
            EXPECT_TRUE(s.run.armour_near) << s.key;
            EXPECT_EQ(s.run.armour_far, s.scheme.armour_at_far_end()) << s.key;
            const bool own = s.building.earthing == "own electrode";
            EXPECT_EQ(s.building.electrode.has_value(), own) << s.key;
            EXPECT_FALSE(own && s.run.armour_far) << s.key;
            EXPECT_EQ(s.run.core_list.size(), static_cast<std::size_t>(s.run.cores));
        }
    }
}

TEST(Design, HouseDefectsAreWorkToDoFirst) {
    site::Job job = support::example_job("demo", support::catalogue());
    job.intake.main_bonding = support::measured(square_millimetres(6));
    int asked = 0;
    for (const SchemeAnswer& s : design(question_of(job)).schemes) {
        if (s.building.earthing == "own electrode") continue;
        ++asked;
        ASSERT_FALSE(s.house_work.empty()) << s.key;
        EXPECT_NE(s.house_work.front().find("house bonding upgrade"), std::string::npos);
        EXPECT_GE(s.price.put_right_first, 145) << s.key;
    }
    EXPECT_GT(asked, 0);
}

}  // namespace
}  // namespace toft::answer
