#include "codec/ground.h"

#include "codec/schema_walk.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <limits>
#include <set>

namespace toft::codec {
namespace {

Tree said_of(const site::Job& job) {
    return Tree::parse(write_ground(answer::ground(support::question_of(job))));
}

Tree example_said(const std::string& name) {
    return said_of(support::example_job(name, support::catalogue()));
}

const char* kind_of(const Tree& value) {
    if (value.is_number_integer()) return "integer";
    if (value.is_number()) return "number";
    return value.is_boolean()  ? "boolean"
           : value.is_string() ? "string"
           : value.is_array()  ? "array"
           : value.is_object() ? "object"
                               : "null";
}

/// What of `value` the schema does not allow, by place.
void misfits(const Tree& schema, const Tree& value, const std::string& at,
             std::vector<std::string>& out) {
    if (schema.contains("enum")) {
        const Tree& words = schema["enum"];
        if (std::find(words.begin(), words.end(), value) == words.end()) out.push_back(at);
        return;
    }
    const std::string kind = kind_of(value);
    if (!may_be(schema, kind.c_str()) && !(kind == "integer" && may_be(schema, "number"))) {
        out.push_back(at + " is " + kind);
        return;
    }
    if (value.is_array()) {
        for (std::size_t i = 0; i < value.size(); ++i) {
            misfits(schema["items"], value[i], at + "/" + std::to_string(i), out);
        }
    } else if (value.is_object()) {
        for (const auto& [key, inner] : value.items()) {
            const Tree& properties = schema["properties"];
            if (!properties.contains(key)) {
                out.push_back(at + "/" + key + " is no key");
            } else {
                misfits(properties[key], inner, at + "/" + key, out);
            }
        }
        for (const Tree& key : schema["required"]) {
            if (!value.contains(key)) out.push_back(at + " lacks " + key.get<std::string>());
        }
    }
}

std::vector<std::string> misfits(const Tree& value) {
    std::vector<std::string> out;
    misfits(schema_named("ground"), value, "", out);
    return out;
}

using Places = std::vector<std::string>;

TEST(GroundText, EveryExampleFitsTheSchema) {
    for (const std::string& name : support::example_names()) {
        EXPECT_EQ(misfits(example_said(name)), Places{}) << name;
    }
}

TEST(GroundText, TheSchemaRefusesWhatDoesNotFit) {
    Tree said = example_said("demo");
    said["buildings"][0]["separation"]["distance_m"] = nullptr;
    said["soil"].erase("says");
    said["more"] = 1;
    EXPECT_EQ(misfits(said).size(), 3u);
}

RC_GTEST_PROP(GroundTextLaw, AnyJobFitsTheSchema, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    for (const std::string& place : misfits(said_of(job))) RC_FAIL(place);
}

TEST(GroundText, EndsWithALineFeedAndNamesItsFormat) {
    const std::string text =
        write_ground(answer::ground(support::question_of(support::plain_job())));
    EXPECT_EQ(text.back(), '\n');
    EXPECT_EQ(Tree::parse(text)["format"], "toft-ground/1");
}

TEST(GroundText, FiguresAreThoseOfTheAnswer) {
    const site::Job job = support::plain_job();
    const answer::GroundAnswer answer = answer::ground(support::question_of(job));
    const Tree said = Tree::parse(write_ground(answer));
    const Tree& shed = said["buildings"][0];
    const answer::GroundSideAnswer& side = answer.sides[0];
    const auto expect = [](const Tree& json, double value) {
        EXPECT_NEAR(json.get<double>(), value, 1e-8 * std::max(1.0, std::abs(value)));
    };
    expect(shed["electrode"]["resistance_ohm"]["high"], side.year.high_ohm);
    expect(shed["separation"]["distance_m"], side.separation.distance_m);
    expect(shed["separation"]["transferred"]["high"], side.separation.transferred_high);
    ASSERT_EQ(shed["lost_neutral"]["ways"].size(), side.lost_neutral.ways.size());
    for (std::size_t i = 0; i < side.lost_neutral.ways.size(); ++i) {
        const Tree& way = shed["lost_neutral"]["ways"][i];
        expect(way["volts"]["high"], side.lost_neutral.ways[i].high_v);
        expect(way["volts"]["low"], side.lost_neutral.ways[i].low_v);
        EXPECT_EQ(way["by_load"].size(), side.lost_neutral.ways[i].over_load.size());
        EXPECT_EQ(way["body_ma"].size(), side.lost_neutral.ways[i].body.size());
    }
    EXPECT_EQ(said["cautions"].size(), answer.cautions.size());
}

TEST(GroundText, WhatHasNoBoundIsNullAndNeverZero) {
    answer::GroundAnswer answer = answer::ground(support::question_of(support::plain_job()));
    answer.soil.strata[0].high_ohm_m = std::numeric_limits<double>::infinity();
    const Tree said = Tree::parse(write_ground(answer));
    EXPECT_TRUE(said["soil"]["layers"][0]["resistivity_ohm_m"]["high"].is_null());
    EXPECT_TRUE(said["soil"]["layers"][0]["thickness_m"].is_null()) << "the deepest has no end";
    EXPECT_EQ(misfits(said), Places{});
}

TEST(GroundText, ASupplyWithoutACombinedNeutralSaysThatItDoesNotApply) {
    const Tree lost = example_said("tt-shed")["buildings"][0]["lost_neutral"];
    EXPECT_EQ(lost, Tree::parse(R"({"applies": false})"));
}

TEST(GroundText, ReadingsAndATestWithSpikesAreListed) {
    site::Job job = support::plain_job();
    for (const double a : {0.5, 1.0, 2.0, 4.0}) {
        site::PinReading pin;
        pin.spacing = metres(a);
        pin.resistance = ohms(10 / a);
        job.ground.pins.push_back(pin);
    }
    answer::GroundAnswer answer = answer::ground(support::question_of(job));
    answer.sides[0].read_ohm = 41;
    answer.sides[0].read_error_ohm = 3;
    answer.sides[0].read_says = "read";
    const Tree said = Tree::parse(write_ground(answer));
    EXPECT_EQ(said["soil"]["verdict"], "uniform");
    ASSERT_EQ(said["soil"]["readings"].size(), 4u);
    EXPECT_EQ(said["soil"]["readings"][3]["spacing_m"], 4.0);
    EXPECT_EQ(said["buildings"][0]["electrode"]["fall_of_potential"],
              Tree::parse(R"({"resistance_ohm": 41.0, "error_ohm": 3.0, "says": "read"})"));
    EXPECT_EQ(misfits(said), Places{});
}

}  // namespace
}  // namespace toft::codec
