// What each verb gives is what the functions behind the command line give.

#include "answer/first.h"
#include "answer/levers.h"
#include "answer/unknowns.h"
#include "answer/why.h"
#include "codec/answer.h"
#include "codec/levers.h"
#include "codec/reference.h"
#include "codec/unknowns.h"
#include "codec/why.h"
#include "drawing/svg.h"
#include "gallery/pictures.h"
#include "page/pages.h"
#include "portfolio/kinds.h"
#include "request/asking.h"
#include "rules/rulebook.h"

#include <gtest/gtest.h>

namespace toft::request {
namespace {

struct Demo {
    site::Job job = support::example_job("demo", bench().stock().catalogue);
    answer::Question question{bench().stock().catalogue, bench().stock().book, job};
    answer::Answer answer = answer::design(question);
    Tree body{{"job", example("demo")}};
};

const Demo& demo() {
    static const Demo made;
    return made;
}

Tree body_with(const char* key, const Tree& value) {
    Tree body = demo().body;
    body[key] = value;
    return body;
}

TEST(Verbs, AnswersOfTheJobAreThoseOfTheCommandLine) {
    const answer::Question& q = demo().question;
    EXPECT_EQ(text_of("design", demo().body),
              codec::write_answer(demo().answer, codec::Layout::one_line));
    EXPECT_EQ(text_of("first", demo().body), codec::write_first(answer::first(q, "")));
    EXPECT_EQ(text_of("ask", demo().body), codec::write_ask(answer::ask(q)));
    EXPECT_EQ(text_of("levers", demo().body), codec::write_levers(answer::levers(q)));
    EXPECT_EQ(text_of("why", demo().body),
              codec::write_why(demo().job.title, answer::walks_of(q.catalogue, demo().job)));
    EXPECT_EQ(text_of("check", demo().body), "{}\n");
}

/// Takes out what a first answer leaves out: lengths by rule, and how well figures are known.
void leave_out(Tree& tree) {
    if (tree.is_object()) {
        tree.erase("longest_m");
        if (tree.contains("verdict")) tree.erase("basis");
    }
    if (!tree.is_structured()) return;
    for (Tree& part : tree) leave_out(part);
}

TEST(Verbs, FirstWritesTheSchemeOfTheKeyWhole) {
    const answer::SchemeAnswer& second = demo().answer.schemes.at(1);
    Tree first = ask_for("first", body_with("key", second.key));
    EXPECT_EQ(first["chosen_key"], second.key);
    Tree whole = Tree::parse(text_of("design", demo().body));
    leave_out(first["chosen"]);
    leave_out(whole["schemes"][1]);
    EXPECT_EQ(first["chosen"], whole["schemes"][1]);
    EXPECT_EQ(first["schemes"].size(), whole["schemes"].size());
    EXPECT_EQ(first["assumed"], whole["assumed"]);
    EXPECT_EQ(first["demand"], whole["demand"]);
}

TEST(Verbs, AllShowsEverySoundScheme) {
    answer::Question question = demo().question;
    question.all = true;
    EXPECT_EQ(text_of("design", body_with("all", true)),
              codec::write_answer(answer::design(question), codec::Layout::one_line));
    EXPECT_EQ(faults_of("design", body_with("all", 1)), Gist{"/all wrong-kind"});
}

TEST(Verbs, ExplainsFiguresOfAnyScheme) {
    for (const std::size_t place : {std::size_t{0}, std::size_t{1}}) {
        const answer::SchemeAnswer& scheme = demo().answer.schemes.at(place);
        const answer::Recorded recorded(demo().question, scheme.scheme);
        Tree body = body_with("figure", "voltage-drop");
        if (place > 0) body["key"] = scheme.key;
        EXPECT_EQ(text_of("explain", body),
                  codec::write_working(*recorded.working("voltage-drop"), scheme.key));
    }
    const Tree unknown = ask_for("explain", body_with("figure", "voltage-dropp"));
    EXPECT_EQ(faults_of(unknown), Gist{"/figure unknown-figure"});
    EXPECT_EQ(unknown["faults"][0]["nearest"], "voltage-drop");
    Tree body = body_with("figure", "voltage-drop");
    body["key"] = "no-such-scheme";
    EXPECT_EQ(faults_of("explain", body), Gist{"/key unknown-scheme"});
    body["key"] = nullptr;
    body["run"] = "no-such-run";
    EXPECT_EQ(faults_of("explain", body), Gist{"/run unknown-run"});
}

TEST(Verbs, DrawsEveryPicture) {
    for (const gallery::Picture& picture : gallery::pictures()) {
        SCOPED_TRACE(picture.name);
        const Tree drawn = ask_for("picture", body_with("picture", picture.name));
        ASSERT_EQ(drawn.value("format", ""), "toft-picture/1");
        if (picture.of_ground || picture.of_tolerance) continue;
        EXPECT_EQ(drawn["svg"], drawing::to_svg(picture.draw(
                                    {bench().stock().catalogue, demo().job, demo().answer, 0, 0})));
    }
    EXPECT_EQ(faults_of("picture", body_with("picture", "plase")),
              Gist{"/picture unknown-picture"});
    EXPECT_EQ(faults_of("picture", body_with("width", 3)), Gist{"/width out-of-range"});
    EXPECT_EQ(faults_of("picture", body_with("key", "none")), Gist{"/key unknown-scheme"});
}

TEST(Verbs, WritesEveryPaper) {
    for (const paper::Kind& kind : paper::kinds()) {
        SCOPED_TRACE(kind.file);
        Tree body = body_with("kind", kind.file);
        body["date"] = "2026-11-29";
        const Tree written = ask_for("paper", body);
        ASSERT_EQ(written.value("format", ""), "toft-paper/1");
        EXPECT_EQ(written["title"], kind.name);
        paper::Subject subject{bench().stock().catalogue, demo().job, demo().answer, 0,
                               "2026-11-29"};
        subject.workings = paper::workings_of(demo().question, demo().answer.schemes.front());
        const auto sheets = page::pages(paper::written(kind, subject));
        ASSERT_EQ(written["sheets"].size(), sheets.size());
        EXPECT_EQ(written["sheets"][0], drawing::to_svg(sheets.front()));
    }
    Tree body = body_with("kind", "labels");
    EXPECT_EQ(faults_of("paper", body), Gist{"/date missing"});
    body["date"] = "2026-02-30";
    EXPECT_EQ(faults_of("paper", body), Gist{"/date date"});
    body["date"] = "2026-11-29";
    body["kind"] = "lables";
    EXPECT_EQ(faults_of("paper", body), Gist{"/kind unknown-paper"});
}

TEST(Verbs, APaperThatNeedsASchemeIsNotWrittenWithoutOne) {
    Tree body{{"job", example("caravan-no-scheme")}, {"kind", "labels"}, {"date", "2026-11-29"}};
    EXPECT_EQ(faults_of("paper", body), Gist{" no-sound-scheme"});
    body["kind"] = "clients-choice";
    EXPECT_EQ(ask_for("paper", body)["format"], "toft-paper/1");
}

TEST(Verbs, ReadingsAreThoseOfTheChosenScheme) {
    const auto& second = demo().answer.schemes.at(1);
    const Tree readings = ask_for("readings", body_with("key", second.key));
    EXPECT_EQ(readings["key"], second.key);
    bool loop = false;
    for (const Tree& reading : readings["readings"]) {
        for (const char* key :
             {"what", "where", "unit", "expected", "limit", "at_least", "says", "instrument"}) {
            EXPECT_TRUE(reading.contains(key)) << key;
        }
        if (reading["step"] != "zs" || loop) continue;
        loop = true;
        EXPECT_NEAR(reading["expected"].get<double>(), second.run.figures.loop_impedance_far_ohm,
                    1e-8);
    }
    EXPECT_TRUE(loop);
    const Tree nothing = ask_for("readings", {{"job", example("caravan-no-scheme")}});
    EXPECT_TRUE(nothing["readings"].empty());
}

TEST(Verbs, PricesAreThoseOfTheBookInUse) {
    EXPECT_EQ(text_of("prices", Tree::object()),
              codec::write_prices("demo price book",
                                  price::listed(bench().stock().book, bench().stock().catalogue)));
}

TEST(Verbs, AboutSaysWhichDataAndRules) {
    const Tree about = ask_for("about", Tree::object());
    EXPECT_EQ(about["program"], "toft");
    EXPECT_EQ(about["edition"], rules::edition());
    EXPECT_EQ(about["data_version"], bench().stock().catalogue.version);
}

TEST(Verbs, LongWorkTellsItsProgressAndStopsWhenAskedTo) {
    Tree body{{"job", example("garage-gym-stable")}};
    long told = 0;
    Asked asked;
    asked.progress = [&](double, const std::string& words) {
        EXPECT_FALSE(words.empty());
        return ++told < 3;
    };
    const Tree answer = Tree::parse(text_of("design", body, asked));
    EXPECT_EQ(answer["search"]["stopped"], true);
    EXPECT_GE(told, 3);
}

}  // namespace
}  // namespace toft::request
