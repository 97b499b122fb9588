// Two people at one job, and what outlives a restart.

#include "server/desk.h"

namespace toft::server {
namespace {

class Jobs : public Desk {
protected:
    Response save(const std::string& id, long base, const Json& job) const {
        return ask(Method::put, "/api/jobs/" + id, {{"base", base}, {"job", job}});
    }
    Response step(const std::string& id, const char* way, long base) const {
        return ask(Method::post, "/api/jobs/" + id + "/" + way, {{"base", base}});
    }
};

TEST_F(Jobs, TheJobThatWasKeptComesBackAsItWas) {
    const Json state = kept(demo());
    EXPECT_EQ(state["job"], demo());
    EXPECT_EQ(state["revision"], 1);
    EXPECT_EQ(state["changed_by"], "Ada L.");
    EXPECT_EQ(state["title"], demo()["title"]);
    EXPECT_FALSE(state["can_undo"].get<bool>());
    EXPECT_EQ(get("/api/jobs/studio"), state);
    const Json unnamed = done(ask(Method::post, "/api/jobs", {{"job", demo()}}), 201);
    EXPECT_EQ(unnamed["id"].get<std::string>().size(), 36u) << "a UUID is made up";
    EXPECT_EQ(get("/api/jobs")["jobs"].size(), 2u);
}

TEST_F(Jobs, WhatTwoPeopleChangeInDifferentPlacesGoesTogether) {
    kept(demo());
    Json hers = demo();
    hers["title"] = "Her title";
    Json his = demo();
    his["intake"]["ze_ohm"] = 0.19;
    EXPECT_FALSE(done(save("studio", 1, hers))["merged"].get<bool>());
    const Json merged = done(save("studio", 1, his));
    EXPECT_TRUE(merged["merged"].get<bool>());
    EXPECT_EQ(merged["revision"], 3);
    EXPECT_EQ(merged["job"]["title"], "Her title");
    EXPECT_EQ(merged["job"]["intake"]["ze_ohm"], 0.19);
}

TEST_F(Jobs, WhatTwoPeopleChangeInOnePlaceIsNamedAndNothingIsLost) {
    kept(demo());
    Json hers = demo();
    hers["title"] = "Her title";
    Json his = demo();
    his["title"] = "His title";
    his["intake"]["ze_ohm"] = 0.19;
    done(save("studio", 1, hers));
    const Json clash = done(save("studio", 1, his), 409);
    ASSERT_EQ(clash["clashes"].size(), 1u);
    EXPECT_EQ(clash["clashes"][0]["pointer"], "/title");
    EXPECT_EQ(clash["clashes"][0]["was"], demo()["title"]);
    EXPECT_EQ(clash["clashes"][0]["yours"], "His title");
    EXPECT_EQ(clash["clashes"][0]["theirs"], "Her title");
    EXPECT_EQ(clash["current"]["revision"], 2);
    EXPECT_EQ(clash["merged_job"]["intake"]["ze_ohm"], 0.19);
    EXPECT_EQ(get("/api/jobs/studio")["job"], hers) << "nothing was saved";
    Json settled = clash["merged_job"];
    settled["title"] = "His title";
    EXPECT_EQ(done(save("studio", 2, settled))["job"]["title"], "His title");
}

TEST_F(Jobs, UndoAndRedoOutliveARestart) {
    kept(demo());
    Json changed = demo();
    changed["title"] = "Changed";
    done(save("studio", 1, changed));
    open();
    EXPECT_EQ(done(step("studio", "undo", 2))["job"], demo());
    open();
    const Json again = done(step("studio", "redo", 1));
    EXPECT_EQ(again["job"]["title"], "Changed");
    EXPECT_TRUE(again["can_undo"].get<bool>());
    EXPECT_FALSE(again["can_redo"].get<bool>());
    done(step("studio", "redo", 2), 409);
    done(step("studio", "undo", 1), 409);
    const Json revisions = get("/api/jobs/studio/revisions")["revisions"];
    ASSERT_EQ(revisions.size(), 2u);
    EXPECT_EQ(get("/api/jobs/studio/revisions/1")["job"], demo());
}

TEST_F(Jobs, WhoListensHearsOfEveryRevisionAndOfThoseOnly) {
    kept(demo());
    kept(demo(), "other");
    const Response heard = ask(request(Method::get, "/api/jobs/studio/events"));
    ASSERT_TRUE(heard.channel);
    EXPECT_EQ(heard.channel->take().text,
              "event: revision\ndata: {\"revision\":1,\"by\":\"Ada L.\"}\n\n");
    Json changed = demo();
    changed["title"] = "Changed";
    done(save("other", 1, changed));
    EXPECT_EQ(heard.channel->take().text, "");
    done(save("studio", 1, changed));
    done(step("studio", "undo", 2));
    EXPECT_EQ(heard.channel->take().text,
              "event: revision\ndata: {\"revision\":2,\"by\":\"Ada L.\"}\n\n"
              "event: revision\ndata: {\"revision\":1,\"by\":\"Ada L.\"}\n\n");
}

TEST_F(Jobs, WhatIsExportedComesInElsewhereWithAllItHas) {
    kept(demo());
    Json changed = demo();
    changed["title"] = "Changed";
    done(save("studio", 1, changed));
    Request photo = request(Method::post, "/api/jobs/studio/photos", "\xff\xd8\xff\xe0 a picture");
    photo.headers.type = "image/jpeg";
    done(ask(photo), 201);
    done(ask(Method::post, "/api/jobs/studio/readings",
             {{"fact", "/intake/ze_ohm"}, {"value", 0.21}, {"unit", "ohm"}}),
         201);
    done(ask(Method::post, "/api/jobs/studio/papers", {{"kinds", {"labels"}}}), 201);
    const std::string file = ask(request(Method::get, "/api/export")).body;
    const Response paper = ask(request(Method::get, "/api/papers/1/labels.pdf"));

    class Elsewhere : public Desk {
    public:
        using Desk::ask;
        using Desk::get;
        using Desk::request;
        void TestBody() override {}
    } there;
    const Response taken = there.ask(there.request(Method::post, "/api/import", file));
    ASSERT_EQ(taken.status, 200u) << taken.body;
    EXPECT_EQ(there.get("/api/jobs/studio")["job"], changed);
    EXPECT_EQ(there.get("/api/jobs/studio/revisions")["revisions"].size(), 2u);
    EXPECT_EQ(there.get("/api/jobs/studio/readings")["readings"].size(), 1u);
    const Json photos = there.get("/api/jobs/studio/photos")["photos"];
    ASSERT_EQ(photos.size(), 1u);
    EXPECT_EQ(there.ask(there.request(Method::get, photos[0]["url"])).body, photo.body);
    const Json issues = there.get("/api/jobs/studio/papers")["issues"];
    ASSERT_EQ(issues.size(), 1u);
    EXPECT_EQ(there.ask(there.request(Method::get, issues[0]["files"][0]["url"])).body, paper.body);
    const Response twice = there.ask(there.request(Method::post, "/api/import", file));
    EXPECT_FALSE(Json::parse(twice.body)["imported"][0]["written"].get<bool>());
}

}  // namespace
}  // namespace toft::server
