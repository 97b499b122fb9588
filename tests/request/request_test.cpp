// The door to the engine: what is not understood is refused with its place, whatever comes.

#include "request/request.h"

#include "request/asking.h"

#include "codec/answer.h"

#include <rapidcheck/gtest.h>

#include <set>

namespace toft::request {
namespace {

TEST(Request, EveryVerbHasANameOfItsOwnAndSaysWhatItIsFor) {
    std::set<std::string> names;
    for (const Verb& verb : verbs()) {
        EXPECT_TRUE(names.insert(verb.name).second) << verb.name;
        EXPECT_TRUE(*verb.says) << verb.name;
        std::set<std::string> keys;
        for (const Taken& taken : verb.takes) EXPECT_TRUE(keys.insert(taken.key).second);
    }
    for (const char* name : {"about", "ask", "check", "design", "explain", "first", "levers",
                             "paper", "picture", "prices", "readings", "why"}) {
        EXPECT_TRUE(names.count(name)) << name;
    }
    for (const Verb& verb : first_verbs()) EXPECT_TRUE(names.count(verb.name)) << verb.name;
}

TEST(Request, AVerbThatIsNotKnownIsRefusedWithTheNearest) {
    const Tree answer = ask_for("desing", Tree::object());
    EXPECT_EQ(faults_of(answer), Gist{" unknown-verb"});
    EXPECT_EQ(answer["faults"][0]["nearest"], "design");
    EXPECT_EQ(answer["faults"][0]["allowed"].size(), verbs().size());
    EXPECT_EQ(faults_of("", Tree::object()), Gist{" unknown-verb"});
}

TEST(Request, EveryVerbAboutAJobAsksForOneAndRefusesWhatItDoesNotKnow) {
    for (const Verb& verb : verbs()) {
        SCOPED_TRACE(verb.name);
        const Gist odd = faults_of(verb.name, {{"odd", 1}});
        EXPECT_NE(std::find(odd.begin(), odd.end(), "/odd unknown-key"), odd.end());
        for (const Taken& taken : verb.takes) {
            if (!taken.required) continue;
            const Gist without = faults_of(verb.name, Tree::object());
            const std::string fault = std::string("/") + taken.key + " missing";
            EXPECT_NE(std::find(without.begin(), without.end(), fault), without.end()) << fault;
        }
    }
}

TEST(Request, PointersLeadIntoTheJobNotIntoTheBody) {
    Tree job = example("demo");
    job["intake"]["earthing"] = "TN-CS";
    job["runs"][0]["legs"][0]["length_m"] = -1;
    for (const char* verb : {"first", "design", "check", "why", "readings", "ask", "levers"}) {
        SCOPED_TRACE(verb);
        EXPECT_EQ(faults_of(verb, {{"job", job}}),
                  (Gist{"/intake/earthing unknown-word", "/runs/0/legs/0/length_m out-of-range"}));
    }
    const std::string twice = answer(bench(), "check", R"({"job": {"title": "a", "title": "b"}})");
    EXPECT_EQ(faults_of(Tree::parse(twice)), Gist{"/title duplicate-key"});
    EXPECT_EQ(faults_of("check", {{"job", Tree::array()}}), Gist{" wrong-kind"});
}

TEST(Request, FaultsOfAJobAreThoseOfTheReader) {
    Tree job = example("three-facts");
    job.erase("intake");
    job["buildings"][1].erase("load_w");
    const auto read = codec::read_job(job.dump(), bench().stock().catalogue);
    ASSERT_FALSE(read);
    EXPECT_EQ(text_of("check", {{"job", job}}), codec::write_faults(read.error()));
}

TEST(Request, HostileBodiesAreRefused) {
    for (const Verb& verb : verbs()) {
        SCOPED_TRACE(verb.name);
        const auto gist = [&](const std::string& body) {
            return faults_of(Tree::parse(answer(bench(), verb.name, body)));
        };
        EXPECT_EQ(gist("{"), Gist{" not-json"});
        EXPECT_EQ(gist("\xff"), Gist{" not-json"});
        EXPECT_EQ(gist(std::string("{\0}", 3)), Gist{" not-json"});
        EXPECT_EQ(gist("[1]"), Gist{" wrong-kind"});
        EXPECT_EQ(gist(std::string(100, '[')), Gist{" too-deep"});
        EXPECT_EQ(gist(std::string(4u << 20, ' ')), Gist{" too-large"});
        EXPECT_EQ(gist(R"({"job": 1e999})"), Gist{" not-json"});
    }
}

TEST(Request, AnEmptyBodyIsAnEmptyObject) {
    EXPECT_EQ(answer(bench(), "about", ""), text_of("about", Tree::object()));
}

RC_GTEST_PROP(Request, AnyTextForAnyVerbIsAnsweredInJson, (const std::string& body)) {
    const Verb& verb = verbs()[*rc::gen::inRange<std::size_t>(0, verbs().size())];
    RC_ASSERT(Tree::accept(answer(bench(), verb.name, body)));
}

}  // namespace
}  // namespace toft::request
