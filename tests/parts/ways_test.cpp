#include "parts/ways.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::parts {
namespace {

/// A job of a building with those circuits, its name and watts each.
site::Job job_of(const std::vector<std::pair<const char*, double>>& circuits) {
    site::Job job;
    job.buildings.resize(1);
    for (const auto& [name, watts] : circuits) {
        site::Circuit circuit;
        circuit.name = name;
        circuit.load_w = site::Fact<double>{true, watts, watts};
        job.buildings[0].circuits.push_back(circuit);
    }
    return job;
}

answer::SchemeAnswer scheme_on(int phases) {
    answer::SchemeAnswer scheme;
    scheme.run.phases = phases;
    scheme.building.rcds.push_back({30, "A", false, {"every circuit"}});
    return scheme;
}

TEST(Ways, FollowTheListWithTheirDesigns) {
    const picture::Example& one = picture::example("flat-cable-room");
    const answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
    const site::Building& far = *site::find_building(one.job, one.job.runs[0].to);
    const std::vector<Way> ways = ways_of(one.job, far, scheme);
    ASSERT_EQ(ways.size(), far.circuits.size());
    for (std::size_t i = 0; i < ways.size(); ++i) {
        EXPECT_EQ(ways[i].number, static_cast<int>(i) + 1);
        EXPECT_EQ(ways[i].name, far.circuits[i].name);
        if (ways[i].design) EXPECT_EQ(ways[i].design->number, ways[i].number);
        EXPECT_EQ(ways[i].device.has_value(), ways[i].design || far.circuits[i].device);
    }
}

TEST(Ways, WhatTheSchemeAloneNamesIsAWayToo) {
    const site::Job job = job_of({});
    const answer::SchemeAnswer scheme = scheme_on(1);
    const std::vector<Way> ways = ways_of(job, job.buildings[0], scheme);
    ASSERT_EQ(ways.size(), 1u);
    EXPECT_EQ(ways[0].name, "every circuit");
    EXPECT_EQ(ways[0].number, 0);
    EXPECT_NE(ways[0].rcd, nullptr);
}

TEST(Ways, SinglePhaseOnesGoToTheLineThatHasLeastTheLargestFirst) {
    site::Job job = job_of({{"small", 500}, {"large", 3000}, {"middle", 2000}, {"next", 1000}});
    job.buildings[0].circuits.push_back(job.buildings[0].circuits[1]);
    job.buildings[0].circuits.back().phases = 3;
    const answer::SchemeAnswer scheme = scheme_on(3);
    const std::vector<Way> ways = ways_of(job, job.buildings[0], scheme);
    EXPECT_EQ(ways[1].line, 0);
    EXPECT_EQ(ways[2].line, 1);
    EXPECT_EQ(ways[3].line, 2);
    EXPECT_EQ(ways[0].line, 2) << "1000 W stand there, less than anywhere";
    EXPECT_EQ(ways[4].line, every_line);
    EXPECT_EQ(line_words(ways[0], 3), "on L3");
    EXPECT_EQ(line_words(ways[4], 3), "on L1, L2 and L3");
    EXPECT_EQ(line_words(ways[0], 1), "");
}

TEST(Ways, WhatNobodyChoseIsNotInvented) {
    site::Job job = job_of({{"Lights", 100}});
    const answer::SchemeAnswer scheme = scheme_on(1);
    Way way = ways_of(job, job.buildings[0], scheme)[0];
    EXPECT_FALSE(way.device);
    EXPECT_EQ(way_device_words(way), "not known: chosen with the circuit");
    job.buildings[0].circuits[0].device = site::NamedDevice{"BS EN 60898", "B", amperes(16)};
    way = ways_of(job, job.buildings[0], scheme)[0];
    EXPECT_EQ(way_device_words(way), "16 A type B breaker with residual part, BS EN 60898");
    job.buildings[0].circuits[0].device = site::NamedDevice{"BS 88-3", "", amperes(16)};
    way = ways_of(job, job.buildings[0], scheme)[0];
    EXPECT_EQ(way_device_words(way), "16 A BS 88-3 fuse");
    EXPECT_TRUE(way.residual_apart());
    EXPECT_FALSE(way.residual_inside());
}

TEST(Ways, WhatIsDesignedIsToldWithItsLimits) {
    answer::CircuitAnswer circuit;
    circuit.family = "flat twin and earth";
    circuit.live_mm2 = 2.5;
    circuit.cpc_mm2 = 1.5;
    EXPECT_EQ(circuit_cable_words(circuit), "2.5 mm² flat twin and earth, earth core 1.5 mm²");
    circuit.cpc_mm2 = 2.5;
    EXPECT_EQ(circuit_cable_words(circuit), "2.5 mm² flat twin and earth");
    circuit.drop_percent = answer::CircuitMatter{2.468, 5, 0.49};
    circuit.rise_percent = answer::CircuitMatter{2.01, 1, 2.01};
    const std::vector<MatterWords> matters = matters_of(circuit);
    ASSERT_EQ(matters.size(), 2u);
    EXPECT_EQ(matters[0].value, "2.47 of 5 %");
    EXPECT_FALSE(matters[0].over);
    EXPECT_TRUE(matters[1].over);
}

TEST(Ways, WhatIsPastItsLimitIsHeeded) {
    answer::CircuitAnswer circuit;
    circuit.rise_percent = answer::CircuitMatter{2.01, 1, 2.01};
    circuit.residual_clears = true;
    Way way;
    EXPECT_TRUE(way_cautions(way).empty());
    way.design = &circuit;
    EXPECT_EQ(way_cautions(way),
              std::vector<std::string>{"past its limit: voltage rise 2.01 of 1 %"});
    circuit.loop_ohm = answer::CircuitMatter{1.2, 1, 1.2};
    EXPECT_EQ(way_cautions(way).size(), 3u);
}

TEST(Ways, SourcesGiveAndMotorsTurn) {
    site::Circuit circuit;
    Way way;
    EXPECT_FALSE(gives(way) || turns(way));
    way.facts = &circuit;
    for (const auto& [kind, give, turn] : {std::tuple{site::CircuitKind::solar, true, false},
                                           {site::CircuitKind::battery, true, false},
                                           {site::CircuitKind::motor, false, true},
                                           {site::CircuitKind::pump, false, true},
                                           {site::CircuitKind::lighting, false, false}}) {
        circuit.kind = kind;
        EXPECT_EQ(gives(way), give);
        EXPECT_EQ(turns(way), turn);
    }
}

}  // namespace
}  // namespace toft::parts
