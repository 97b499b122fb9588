// The job's schema and the reader say the same: keys, words, ranges, what may be null.

#include "codec/reading.h"
#include "codec/schema_walk.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::codec {
namespace {

/// A leg that names no family may name no cores and no section.
Tree without_what_hangs_on(const std::string& pointer, Tree job) {
    if (pointer != "/runs/0/legs/0/family") return job;
    Tree& leg = job["runs"][0]["legs"][0];
    if (leg.contains("family") && !leg["family"].is_null()) return job;
    leg.erase("cores");
    leg.erase("live_mm2");
    return job;
}

/// The whole job with `value` at `pointer`; what would contradict it is taken away.
Tree with(const std::string& pointer, Tree value) {
    Tree job = whole_job_for(pointer);
    job[Pointer(pointer)] = std::move(value);
    if (pointer == "/buildings/0/load_w") job["buildings"][0].erase("load_a");
    if (pointer == "/runs/0/legs/0/method") job["runs"][0]["legs"][0].erase("trench");
    if (pointer == "/buildings/0/electrode/length_m") {
        Tree& e = job["buildings"][0]["electrode"];  // a wire may be longer than a rod
        e["kind"] = "buried wire";
        for (const char* of_rods : {"rods", "arrangement", "spacing_m"}) e.erase(of_rods);
    }
    return without_what_hangs_on(pointer, std::move(job));
}

/// Said of a value that the format allows but the tables or the rest of the job do not.
bool of_the_tables(const Fault& fault) {
    return fault.code == "unknown-size" || fault.code == "unknown-device" ||
           fault.code == "phases" || fault.code == "nothing-on-offer" || fault.code == "trench";
}

/// Said of readings and electrodes whose keys, each well stated, do not go together.
bool of_the_ground(const std::string& pointer, const Fault& fault) {
    if (pointer.rfind("/ground/", 0) != 0 && pointer.find("/electrode") == std::string::npos) {
        return false;
    }
    return fault.code == "contradiction" || fault.code == "out-of-order";
}

/// Only the deepest layer goes without a thickness; null and nothing are said there.
bool of_a_layer_above(const std::string& pointer) {
    return pointer == "/ground/layers/0/thickness_m";
}

void expect_accepted(const std::string& pointer, const Tree& value) {
    for (const Fault& fault : faults_of(with(pointer, value))) {
        if (of_the_tables(fault) || of_the_ground(pointer, fault)) continue;
        ADD_FAILURE() << pointer << " = " << value << " is refused: " << fault.pointer << ": "
                      << fault.says;
    }
}

/// The first fault at `where` (the key itself when empty); it must be there.
Fault expect_refused(const std::string& pointer, const Tree& value, std::string where = "") {
    if (where.empty()) where = pointer;
    for (Fault& fault : faults_of(with(pointer, value))) {
        if (fault.pointer != where) continue;
        EXPECT_FALSE(fault.code.empty());
        EXPECT_FALSE(fault.says.empty());
        return fault;
    }
    ADD_FAILURE() << pointer << " = " << value << " has no fault at " << where;
    return {};
}

bool names_something(const std::string& pointer) {
    for (const char* end : {"/id", "/from", "/to", "/at"}) {
        if (pointer.size() > 2 && pointer.substr(pointer.size() - std::string(end).size()) == end) {
            return true;
        }
    }
    return pointer == "/buildings" || pointer == "/runs";
}

std::string parent(const std::string& pointer) { return pointer.substr(0, pointer.rfind('/')); }

/// One of the two numbers of a place on the plan: what is said of it is said of the place.
bool coordinate(const std::string& pointer) {
    const auto ends_with = [](const std::string& text, const std::string& end) {
        return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
    };
    return ends_with(pointer, "/at_m/0") || ends_with(pointer, "/through_m/0/0");
}

double below(double low) { return low - std::max(1e-6, std::abs(low) * 0.01); }
double above(double high) { return high * 1.01 + 0.001; }

class JobSchema : public ::testing::Test {
protected:
    template <class Wanted, class Check>
    void each(const Wanted& wanted, const Check& check) {
        int found = 0;
        for (const SchemaKey& key : job_keys()) {
            if (!wanted(key.schema)) continue;
            ++found;
            check(key);
        }
        EXPECT_GT(found, 0);
    }
};

bool ranged(const Tree& schema) { return schema.contains("minimum"); }
bool detailed(const Tree& schema) { return ranged(schema) && may_be(schema, "object"); }
bool any(const Tree&) { return true; }

TEST_F(JobSchema, AJobThatStatesEveryKeyLoads) {
    for (const Fault& fault : faults_of(whole_job())) {
        ADD_FAILURE() << fault.pointer << ": " << fault.says;
    }
    EXPECT_GT(job_keys().size(), 90u);
}

TEST_F(JobSchema, EveryKeyIsDescribed) {
    each(any, [](const SchemaKey& key) {
        EXPECT_GT(key.schema.value("description", "").size(), 5u) << key.pointer;
    });
}

TEST_F(JobSchema, RangesAreThoseOfTheReader) {
    each(ranged, [](const SchemaKey& key) {
        const std::string where = coordinate(key.pointer) ? parent(key.pointer) : key.pointer;
        const double low = key.schema.at("minimum").get<double>();
        const double high = key.schema.at("maximum").get<double>();
        expect_accepted(key.pointer, low);
        expect_accepted(key.pointer, high);
        expect_refused(key.pointer, below(low), where);
        expect_refused(key.pointer, above(high), where);
        for (const Tree& wrong : {Tree("3"), Tree(true), Tree::array({3})}) {
            EXPECT_EQ(expect_refused(key.pointer, wrong, where).code, "wrong-kind") << key.pointer;
        }
    });
}

TEST_F(JobSchema, RangesHoldWithinObjectsToo) {
    each(detailed, [](const SchemaKey& key) {
        const double low = key.schema.at("minimum").get<double>();
        const double high = key.schema.at("maximum").get<double>();
        for (const char* part : {"value", "low", "high"}) {
            EXPECT_EQ(key.schema.at("properties").at(part).at("minimum"), low) << key.pointer;
            EXPECT_EQ(key.schema.at("properties").at(part).at("maximum"), high) << key.pointer;
        }
        expect_accepted(key.pointer, {{"value", high}});
        expect_accepted(key.pointer, {{"low", low}, {"high", high}});
        expect_refused(key.pointer, {{"low", high}, {"high", low}});
        expect_refused(key.pointer, {{"value", above(high)}}, key.pointer + "/value");
        expect_refused(key.pointer, {{"low", below(low)}, {"high", high}}, key.pointer + "/low");
        expect_refused(key.pointer, {{"low", low}, {"high", above(high)}}, key.pointer + "/high");
        expect_refused(key.pointer, {{"value", low}, {"low", low}});
        expect_refused(key.pointer, {{"low", low}});
        expect_refused(key.pointer, Tree::object());
        expect_refused(key.pointer, {{"value", low}, {"basis", "guessed"}}, key.pointer + "/basis");
        for (const std::string& word : words_of(key.schema.at("properties").at("basis"))) {
            expect_accepted(key.pointer, {{"value", low}, {"basis", word}});
        }
    });
}

TEST_F(JobSchema, CountsAreWhole) {
    each([](const Tree& schema) { return detailed(schema) && schema.at("maximum") < 1000; },
         [](const SchemaKey& key) {
             const double half = key.schema.at("minimum").get<double>() + 0.5;
             if (key.schema.contains("multipleOf")) {
                 EXPECT_EQ(expect_refused(key.pointer, half).code, "out-of-range");
             } else {
                 expect_accepted(key.pointer, half);
             }
         });
}

TEST_F(JobSchema, WordsAreThoseOfTheReader) {
    each([](const Tree& schema) { return schema.contains("enum"); },
         [](const SchemaKey& key) {
             const auto words = words_of(key.schema);
             for (const std::string& word : words) expect_accepted(key.pointer, word);
             const Fault fault = expect_refused(key.pointer, words.front() + "x");
             EXPECT_EQ(fault.code, "unknown-word");
             EXPECT_EQ(fault.nearest, words.front());
             EXPECT_EQ(fault.allowed, words) << key.pointer;
             EXPECT_EQ(expect_refused(key.pointer, 7).code, "wrong-kind");
         });
}

template <class E>
void expect_words(const std::string& pointer) {
    for (const SchemaKey& key : job_keys()) {
        if (key.pointer != pointer) continue;
        EXPECT_EQ(words_of(key.schema), site::words<E>());
        return;
    }
    ADD_FAILURE() << "the schema has no " << pointer;
}

TEST_F(JobSchema, WordsAreThoseOfTheSurvey) {
    expect_words<site::Earthing>("/intake/earthing");
    expect_words<site::Use>("/buildings/0/use");
    expect_words<site::Construction>("/buildings/0/construction");
    expect_words<site::Metal>("/buildings/0/metalwork/0/what");
    expect_words<site::ComesFrom>("/buildings/0/metalwork/0/comes_from");
    expect_words<site::CircuitKind>("/buildings/0/circuits/0/kind");
    expect_words<site::LegMethod>("/runs/0/legs/0/method");
    expect_words<site::Surface>("/runs/0/legs/0/surface");
    expect_words<site::FedFrom>("/runs/0/fed_from");
    expect_words<site::Prefer>("/wishes/prefer");
    expect_words<site::Season>("/ground/read_when");
    expect_words<site::ElectrodeKind>("/buildings/0/electrode/kind");
    expect_words<site::Arrangement>("/buildings/0/electrode/arrangement");
    EXPECT_EQ(words_of(schema_named("job").at("$defs").at("fact").at("properties").at("basis")),
              site::words<site::Standing>());
}

TEST_F(JobSchema, NullIsUnknownWhereNothingIsRequired) {
    each(any, [](const SchemaKey& key) {
        const bool listed = key.pointer.substr(key.pointer.size() - 2) == "/0";
        const bool nullable =
            may_be(key.schema, "null") ||
            (key.schema.contains("enum") && key.schema.at("enum").back().is_null());
        if (listed || key.pointer == "/buildings/0/at" || of_a_layer_above(key.pointer)) return;
        if (nullable) {
            expect_accepted(key.pointer, nullptr);
            EXPECT_TRUE(!key.required) << key.pointer;
        } else if (!key.required) {
            EXPECT_EQ(key.schema.at("type"), "number") << key.pointer;
        } else {
            expect_refused(key.pointer, nullptr);
        }
    });
}

TEST_F(JobSchema, OnlyRequiredKeysMayNotBeLeftOut) {
    each(any, [](const SchemaKey& key) {
        const Pointer pointer(key.pointer);
        Tree job = whole_job_for(key.pointer);
        if (!job.contains(pointer) || !job.at(pointer.parent_pointer()).is_object()) return;
        job.at(pointer.parent_pointer()).erase(pointer.back());
        if (key.pointer == "/buildings/0/at" || of_a_layer_above(key.pointer)) return;
        job = without_what_hangs_on(key.pointer, std::move(job));
        bool said = false;
        for (const Fault& fault : faults_of(job)) said = said || fault.pointer == key.pointer;
        EXPECT_EQ(said, key.required) << key.pointer;
        EXPECT_EQ(faults_of(job).empty(), !key.required) << key.pointer;
    });
}

TEST_F(JobSchema, UnknownKeysAreRefusedAndTheNearestNamed) {
    std::vector<SchemaKey> keys = job_keys();
    keys.push_back({"", schema_named("job"), true});
    int objects = 0;
    for (const SchemaKey& key : keys) {
        if (!key.schema.contains("properties")) continue;
        ++objects;
        EXPECT_EQ(key.schema.at("additionalProperties"), false) << key.pointer;
        Tree object = Tree::object();
        if (detailed(key.schema)) {
            object["value"] = key.schema.at("minimum");
        } else {
            object = whole_job_for(key.pointer).at(Pointer(key.pointer));
        }
        for (const auto& [name, inner] : key.schema.at("properties").items()) {
            Tree misspelt = object;
            misspelt[name + "x"] = 1;
            const std::string where = key.pointer + "/" + name + "x";
            const Fault fault = expect_refused(key.pointer, misspelt, where);
            EXPECT_EQ(fault.code, "unknown-key");
            EXPECT_EQ(fault.nearest, name) << key.pointer;
            EXPECT_EQ(fault.allowed.size(), key.schema.at("properties").size()) << key.pointer;
            if (detailed(key.schema)) break;
        }
    }
    EXPECT_GT(objects, 40);
}

TEST_F(JobSchema, TextsHaveTheirLengthAndNoControlCharacters) {
    each([](const Tree& schema) { return schema.contains("maxLength"); },
         [](const SchemaKey& key) {
             if (!names_something(key.pointer)) expect_accepted(key.pointer, std::string(200, 'x'));
             expect_refused(key.pointer, std::string(201, 'x'));
             expect_refused(key.pointer, "");
             expect_refused(key.pointer, "a\nb");
             expect_refused(key.pointer, 5);
         });
}

TEST_F(JobSchema, AnswersAreTrueFalseOrNull) {
    each([](const Tree& schema) { return may_be(schema, "boolean"); },
         [](const SchemaKey& key) {
             expect_accepted(key.pointer, true);
             expect_accepted(key.pointer, false);
             EXPECT_EQ(expect_refused(key.pointer, "yes").code, "wrong-kind");
         });
}

TEST_F(JobSchema, ListsAndObjectsHaveTheirKindAndLength) {
    each([](const Tree& schema) { return schema.contains("items"); },
         [](const SchemaKey& key) {
             const auto most = key.schema.at("maxItems").get<std::size_t>();
             const Tree entry = whole_job_for(key.pointer).at(Pointer(key.pointer)).at(0);
             if (!names_something(key.pointer)) expect_accepted(key.pointer, Tree(most, entry));
             if (key.pointer != "/buildings") expect_refused(key.pointer, Tree(most + 1, entry));
             if (key.schema.value("minItems", 0) > 0) expect_refused(key.pointer, Tree::array());
             expect_refused(key.pointer, {{"no", "list"}});
         });
    EXPECT_EQ(expect_refused("/buildings", Tree(201, Tree::object())).code, "too-many");
    each([](const Tree& schema) { return schema.contains("properties") && !detailed(schema); },
         [](const SchemaKey& key) { expect_refused(key.pointer, "no object"); });
}

TEST_F(JobSchema, TwoPhasesAreNotSupported) {
    EXPECT_EQ(expect_refused("/intake/phases", 2).code, "out-of-range");
}

}  // namespace
}  // namespace toft::codec
