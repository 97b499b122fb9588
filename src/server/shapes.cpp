#include "server/shapes.h"

#include <string>
#include <vector>

namespace toft::server {

namespace {

struct Member {
    const char* name;
    Json shape;
    bool required = true;
};

Json said(Json shape, const char* says) {
    shape["description"] = says;
    return shape;
}

Json text(const char* says) { return said({{"type", "string"}}, says); }
Json whole(const char* says) { return said({{"type", "integer"}}, says); }
Json number(const char* says) { return said({{"type", "number"}}, says); }
Json flag(const char* says) { return said({{"type", "boolean"}}, says); }
Json list(Json items) { return {{"type", "array"}, {"items", std::move(items)}}; }
Json shape(const char* name) { return {{"$ref", std::string("#/components/schemas/") + name}}; }

Json object(const char* says, const std::vector<Member>& members, bool open = false) {
    Json properties = Json::object();
    Json required = Json::array();
    for (const Member& member : members) {
        properties[member.name] = member.shape;
        if (member.required) required.push_back(member.name);
    }
    Json made = {{"description", says}, {"type", "object"}, {"required", std::move(required)}};
    if (!open) made["additionalProperties"] = false;
    made["properties"] = std::move(properties);
    return made;
}

Json list_of(const char* says, const char* key, const char* name) {
    return object(says, {{key, list(shape(name))}});
}

/// A job as somebody has it so far: it may still lack facts.
Json draft() { return said({{"type", "object"}}, "A toft-job/1 document, perhaps not yet whole."); }

void add_jobs(Json& all) {
    const std::vector<Member> state = {
        {"id", text("Name of the job in addresses.")},
        {"revision", whole("The current revision.")},
        {"job", draft()},
        {"title", text("The job's title; empty where it has none.")},
        {"archived", flag("Put away.")},
        {"changed_at", text("Last save, undo or redo: UTC, ISO 8601.")},
        {"changed_by", text("By whom.")},
        {"can_undo", flag("There is something to undo.")},
        {"can_redo", flag("There is something to redo.")}};
    std::vector<Member> saved = state;
    saved.push_back({"merged", flag("It was put together with what others had saved.")});
    all["JobState"] = object("A job as it stands.", state);
    all["SavedJob"] = object("A job as it was saved.", saved);
    all["JobRow"] = object("A job in a list.", {{"id", text("Name of the job in addresses.")},
                                                {"title", text("Its title.")},
                                                {"revision", whole("The current revision.")},
                                                {"changed_at", text("Last change.")},
                                                {"changed_by", text("By whom.")},
                                                {"archived", flag("Put away.")}});
    all["JobList"] = list_of("Jobs.", "jobs", "JobRow");
    all["NewJob"] =
        object("A job to keep.", {{"job", draft()},
                                  {"id",
                                   text("1 to 64 letters, digits, - or _, such as a UUID that the "
                                        "page made without a network."),
                                   false},
                                  {"what", text("Words for the history."), false}});
    all["SaveJob"] = object("A job to save.", {{"base", whole("The revision it was made from.")},
                                               {"job", draft()},
                                               {"what", text("Words for the history."), false}});
    all["Base"] = object("What somebody believes to be current.", {{"base", whole("Revision.")}});
    all["Archived"] = object("Whether to put a job away.", {{"archived", flag("Put it away.")}});
    const std::vector<Member> revision = {{"revision", whole("Its number within the job.")},
                                          {"at", text("When: UTC, ISO 8601.")},
                                          {"by", text("By whom.")},
                                          {"what", text("Words for the history.")},
                                          {"undone", flag("It was undone.")}};
    std::vector<Member> with_job = revision;
    with_job.push_back({"job", draft()});
    all["RevisionRow"] = object("A revision in a list.", revision);
    all["RevisionList"] = list_of("Revisions, newest first.", "revisions", "RevisionRow");
    all["Revision"] = object("A revision with its job.", with_job);
}

Json fault() {
    return object(
        "One fault.",
        {{"code", text("What kind of fault it is.")},
         {"pointer", text("JSON pointer of what is at fault.")},
         {"says", text("The fault in a sentence, with the remedy.")},
         {"nearest", {{"type", {"string", "null"}}, {"description", "What was probably meant."}}},
         {"allowed", list({{"type", "string"}})}});
}

std::vector<Member> problem_members() {
    return {{"type", text("about:blank.")},
            {"title", text("What is wrong.")},
            {"status", whole("The HTTP status.")},
            {"detail", text("What to do about it.")},
            {"faults", list(shape("Fault")), false},
            {"format", text("toft-faults/1 where the engine found the faults."), false}};
}

void add_problems(Json& all) {
    all["Fault"] = fault();
    all["Problem"] = object("Problem details (RFC 9457).", problem_members());
    all["Clash"] = object("A fact that both sides changed, each in its own way.",
                          {{"pointer", text("Where yours would go in merged_job.")},
                           {"says", text("In a sentence.")},
                           {"was", Json::object()},
                           {"yours", Json::object()},
                           {"theirs", Json::object()}});
    std::vector<Member> clash = problem_members();
    clash.push_back({"clashes", list(shape("Clash"))});
    clash.push_back({"current", shape("JobState")});
    clash.push_back({"merged_job", draft()});
    all["ClashProblem"] = object("Nothing was saved: both changed the same facts.", clash);
}

void add_belongings(Json& all) {
    const Member fact = {"fact", text("JSON pointer into the current revision.")};
    const Member gone = {"gone", flag("What it belonged to is no longer in the job.")};
    const Member at = {"at", text("When: UTC, ISO 8601.")};
    const Member by = {"by", text("By whom.")};
    all["Photo"] = object("A photo.", {{"photo", whole("Its number.")},
                                       fact,
                                       gone,
                                       {"note", text("Words to it.")},
                                       {"type", text("Media type.")},
                                       {"bytes", whole("Its size.")},
                                       at,
                                       by,
                                       {"url", text("Where its bytes are.")}});
    all["PhotoList"] = list_of("Photos.", "photos", "Photo");
    const Member value = {"value", number("What the instrument shows.")};
    all["Reading"] = object("A reading.", {{"reading", whole("Its number.")},
                                           fact,
                                           gone,
                                           value,
                                           {"unit", text("As the instrument shows it.")},
                                           {"instrument", text("Which instrument.")},
                                           {"note", text("Words to it.")},
                                           at,
                                           by});
    all["ReadingList"] = list_of("Readings.", "readings", "Reading");
    all["NewReading"] = object(
        "A reading to keep.",
        {{"fact", text("JSON pointer into the job, or the name of a test.")},
         value,
         {"unit", text("As the instrument shows it."), false},
         {"instrument", text("Which instrument."), false},
         {"note", text("Words to it."), false},
         {"revision", whole("That the pointer was meant in; left out: the current one."), false},
         {"id",
          text("1 to 64 letters, digits, - or _: what the device calls it. "
               "Sent again, it is kept once."),
          false}});
}

void add_papers(Json& all) {
    const Member key = {"key", text("A scheme's key; left out: by rank."), false};
    const Member rank = {"rank", whole("A scheme's rank; left out: 1."), false};
    const Member date = {"date", text("Year-month-day; left out: today (UTC)."), false};
    all["NewIssue"] =
        object("Papers to make.",
               {{"kinds", list({{"type", "string"}}), false},
                key,
                rank,
                date,
                {"revision",
                 whole("That whoever issues them has before them; refused where the job is at "
                       "another. Left out: whichever is current."),
                 false}});
    all["Preview"] = object("A paper to look at.",
                            {{"job", draft()}, {"kind", text("Which.")}, key, rank, date});
    all["PaperFile"] = object("A file.", {{"name", text("Its name.")},
                                          {"title", text("For people.")},
                                          {"type", text("Media type.")},
                                          {"bytes", whole("Its size.")},
                                          {"url", text("Where its bytes are.")}});
    all["Issue"] = object("Papers as they were issued.",
                          {{"issue", whole("Its number.")},
                           {"at", text("When: UTC, ISO 8601.")},
                           {"by", text("By whom.")},
                           {"revision", whole("Of the job, that the papers show.")},
                           {"what", text("The scheme in words.")},
                           {"files", list(shape("PaperFile"))}});
    all["IssueList"] = list_of("Issues, newest first.", "issues", "Issue");
}

void add_rest(Json& all) {
    all["About"] = object("This server.", {{"program", text("Its name.")},
                                           {"version", text("Its version.")},
                                           {"edition", text("Of the rules.")},
                                           {"data_version", text("Of the tables.")},
                                           {"by", text("Who asks, as they call themselves.")},
                                           {"lan", flag("Other devices may pair.")},
                                           {"paired", flag("Who asks is let in.")}});
    all["Prices"] = object("A price book.", {{"own", flag("It is the user's own.")},
                                             {"name", text("What it goes by.")},
                                             {"csv", text("The book.")}});
    all["OwnPrices"] = object("A price book of the user's own.",
                              {{"name", text("What it goes by.")}, {"csv", text("The book.")}});
    all["Transfer"] = object("Jobs with all that belongs to them.",
                             {{"format", {{"const", "toft-store/1"}}}}, true);
    all["Imported"] =
        object("What became of one job.", {{"id", text("Its id here.")},
                                           {"was_id", text("Its id in the file.")},
                                           {"title", text("Its title.")},
                                           {"says", text("What became of it.")},
                                           {"written", flag("Something of it was new here.")}});
    all["ImportedList"] = list_of("What became of each job.", "imported", "Imported");
    all["Knock"] = object("A device that wants in.",
                          {{"code", text("As it stands on the screen; case, blanks and hyphens do "
                                         "not count.")},
                           {"name", text("What the device calls itself."), false}});
    all["PairingNow"] = object("What the machine's screen shows.",
                               {{"address", text("To type into the device.")},
                                {"addresses", list({{"type", "string"}})},
                                {"code", text("Empty where it is no longer valid.")},
                                {"seconds_left", number("How long it stays valid.")}});
    all["Device"] = object("A device that was let in.", {{"device", text("Its short name.")},
                                                         {"name", text("As it calls itself.")},
                                                         {"at", text("Since when.")}});
    all["DeviceList"] = list_of("Devices.", "devices", "Device");
}

}  // namespace

Json shapes() {
    Json all = Json::object();
    add_jobs(all);
    add_problems(all);
    add_belongings(all);
    add_papers(all);
    add_rest(all);
    return all;
}

}  // namespace toft::server
