// Papers are made from what is kept and never change afterwards.

#include "server/desk.h"

namespace toft::server {
namespace {

class IssuedPapers : public Desk {
protected:
    Json issue(const Json& wish, unsigned status = 201) const {
        return done(ask(Method::post, "/api/jobs/studio/papers", wish), status);
    }
    std::string bytes(const Json& file) const {
        const Response answer = ask(request(Method::get, file["url"]));
        EXPECT_EQ(answer.status, 200u);
        EXPECT_EQ(answer.type, file["type"]);
        EXPECT_EQ(answer.body.size(), file["bytes"].get<std::size_t>());
        return answer.body;
    }
};

TEST_F(IssuedPapers, AllOfThemComeWithListsAndDrawings) {
    kept(demo());
    const Json made = issue({{"date", "2026-11-29"}});
    std::vector<std::string> names;
    for (const Json& file : made["files"]) {
        names.push_back(file["name"]);
        EXPECT_FALSE(bytes(file).empty());
        EXPECT_NE(file["title"], "");
    }
    EXPECT_EQ(names, (std::vector<std::string>{"clients-choice.pdf", "design-record.pdf",
                                               "installers-sheet.pdf", "ground-sheet.pdf",
                                               "materials.pdf", "test-sheet.pdf", "labels.pdf",
                                               "users-sheet.pdf", "pack.pdf", "materials.csv",
                                               "materials.xlsx", "route.dxf", "trench.dxf"}));
    EXPECT_EQ(made["revision"], 1);
}

TEST_F(IssuedPapers, WhatWasIssuedStaysAsItWasWhateverBecomesOfJobAndPrices) {
    kept(demo());
    const Json first = issue({{"kinds", {"clients-choice"}}, {"date", "2026-11-29"}});
    const std::string before = bytes(first["files"][0]);
    Json changed = demo();
    changed["title"] = "Changed";
    done(ask(Method::put, "/api/jobs/studio", {{"base", 1}, {"job", changed}}));
    std::string csv = get("/api/prices")["csv"];
    const std::string row = "margin percent,%,0.00";
    csv.replace(csv.find(row), row.size(), "margin percent,%,10");
    done(ask(Method::put, "/api/prices", {{"name", "mine.csv"}, {"csv", csv}}));
    open();
    EXPECT_EQ(bytes(first["files"][0]), before);
    const Json second = issue({{"kinds", {"clients-choice"}}, {"date", "2026-11-29"}});
    EXPECT_EQ(second["revision"], 2);
    EXPECT_NE(bytes(second["files"][0]), before) << "title and prices are others now";
    EXPECT_EQ(get("/api/jobs/studio/papers")["issues"].size(), 2u);
}

TEST_F(IssuedPapers, TheSameJobAndDayGiveTheSameBytesAsAPreview) {
    kept(demo());
    const Json made = issue({{"kinds", {"labels"}}, {"date", "2026-11-29"}});
    const Response shown = ask(Method::post, "/api/preview",
                               {{"job", demo()}, {"kind", "labels"}, {"date", "2026-11-29"}});
    EXPECT_EQ(shown.type, "application/pdf");
    EXPECT_EQ(shown.body, bytes(made["files"][0]));
    EXPECT_EQ(get("/api/jobs/studio/papers")["issues"].size(), 1u) << "a preview is kept nowhere";
}

TEST_F(IssuedPapers, ASchemeIsNamedByKeyOrRankAndOneThatIsNotThereIsAFault) {
    kept(demo());
    const Json answer = done(ask(Method::post, "/api/verbs/first", {{"job", demo()}}));
    const std::string key = answer["schemes"][1]["key"];
    const Json by_key = issue({{"kinds", {"labels"}}, {"key", key}, {"date", "2026-11-29"}});
    const Json by_rank = issue({{"kinds", {"labels"}}, {"rank", 2}, {"date", "2026-11-29"}});
    EXPECT_EQ(bytes(by_key["files"][0]), bytes(by_rank["files"][0]));
    EXPECT_EQ(issue({{"key", "none"}}, 422)["faults"][0]["code"], "unknown-scheme");
    EXPECT_EQ(issue({{"rank", 10000}}, 422)["faults"][0]["code"], "unknown-scheme");
    EXPECT_EQ(issue({{"date", "2026-02-30"}}, 422)["faults"][0]["code"], "out-of-range");
}

TEST_F(IssuedPapers, WhereNothingIsSoundOnlyWhatCanDoWithoutASchemeIsWritten) {
    Json none = demo();
    none["runs"][0]["legs"][0]["length_m"] = 2000;
    kept(none);
    const Json made = issue({{"date", "2026-11-29"}});
    ASSERT_EQ(made["files"].size(), 1u);
    EXPECT_EQ(made["files"][0]["name"], "clients-choice.pdf");
    EXPECT_EQ(issue({{"kinds", {"labels"}}}, 422)["faults"][0]["code"], "no-sound-scheme");
}

TEST_F(IssuedPapers, AreOfTheJobThatWhoeverIssuesThemHasBeforeThem) {
    kept(demo());
    Json changed = demo();
    changed["title"] = "Changed";
    done(ask(Method::put, "/api/jobs/studio", {{"base", 1}, {"job", changed}}));
    done(ask(Method::post, "/api/jobs/studio/undo", {{"base", 2}}));
    const Json seen_later = {{"kinds", {"labels"}}, {"revision", 2}};
    const Json refused = issue(seen_later, 409);
    EXPECT_EQ(refused["faults"][0]["code"], "old-base");
    EXPECT_EQ(refused["faults"][0]["pointer"], "/revision");
    EXPECT_TRUE(get("/api/jobs/studio/papers")["issues"].empty());
    done(ask(Method::post, "/api/jobs/studio/redo", {{"base", 1}}));
    EXPECT_EQ(issue({{"kinds", {"labels"}}, {"revision", 1}}, 409)["status"], 409);
    EXPECT_EQ(issue(seen_later)["revision"], 2);
    EXPECT_EQ(issue({{"kinds", {"labels"}}, {"revision", 0}}, 422)["faults"][0]["pointer"],
              "/revision");
}

TEST_F(IssuedPapers, NothingInThemRunsAsAPageOfThisServer) {
    kept(demo());
    const Json made = issue({{"date", "2026-11-29"}});
    EXPECT_GT(made["files"].size(), 4u);
    for (const Json& file : made["files"]) {
        const Response shown = ask(request(Method::get, file["url"]));
        const bool pdf = shown.type == "application/pdf";
        EXPECT_EQ(header(shown, "Content-Disposition").substr(0, pdf ? 6 : 10),
                  pdf ? "inline" : "attachment")
            << file["name"];
        EXPECT_EQ(header(shown, "X-Content-Type-Options"), "nosniff");
        if (!pdf) {
            EXPECT_EQ(header(shown, "Content-Security-Policy"), "default-src 'none'; sandbox");
        }
    }
}

TEST_F(IssuedPapers, BroughtInAsPagesAreRefused) {
    kept(demo());
    issue({{"kinds", {"labels"}}, {"date", "2026-11-29"}});
    Json text = get("/api/jobs/studio/export");
    text["jobs"][0]["issues"][0]["files"][0]["type"] = "text/html";
    const Json refused = done(ask(Method::post, "/api/import", text), 422);
    EXPECT_EQ(refused["faults"][0]["code"], "bad-type");
    text["jobs"][0]["issues"][0]["files"][0]["type"] = "application/pdf";
    text["jobs"][0]["issues"][0]["files"][0]["name"] = "labels.html";
    EXPECT_EQ(done(ask(Method::post, "/api/import", text), 422)["faults"][0]["code"], "bad-type");
}

}  // namespace
}  // namespace toft::server
