#include "server/told.h"

#include "http/target.h"

namespace toft::server {

namespace {

/// A fact's place: the pointer as it stands now.
void add_place(Json& tree, const store::FactPlace& place) {
    tree["fact"] = place.fact;
    tree["gone"] = place.gone;
}

}  // namespace

Json state_json(const store::JobState& state) {
    return {{"id", state.id},
            {"revision", state.revision},
            {"job", tree_of(state.job)},
            {"title", state.title},
            {"archived", state.archived},
            {"changed_at", state.changed_at},
            {"changed_by", state.changed_by},
            {"can_undo", state.can_undo},
            {"can_redo", state.can_redo}};
}

Json row_json(const store::JobRow& row) {
    return {{"id", row.id},
            {"title", row.title},
            {"revision", row.revision},
            {"changed_at", row.changed_at},
            {"changed_by", row.changed_by},
            {"archived", row.archived}};
}

Json revision_json(const store::Revision& revision) {
    Json tree = {{"revision", revision.revision},
                 {"at", revision.at},
                 {"by", revision.by},
                 {"what", revision.what},
                 {"undone", revision.undone}};
    if (!revision.job.empty()) tree["job"] = tree_of(revision.job);
    return tree;
}

Json photo_json(const store::Photo& photo) {
    Json tree = {{"photo", photo.photo}};
    add_place(tree, photo.place);
    tree["note"] = photo.note;
    tree["type"] = photo.type;
    tree["bytes"] = photo.size;
    tree["at"] = photo.at;
    tree["by"] = photo.by;
    tree["url"] = "/api/photos/" + std::to_string(photo.photo);
    return tree;
}

Json reading_json(const store::Reading& reading) {
    Json tree = {{"reading", reading.reading}};
    add_place(tree, reading.place);
    tree["value"] = reading.value;
    tree["unit"] = reading.unit;
    tree["instrument"] = reading.instrument;
    tree["note"] = reading.note;
    tree["at"] = reading.at;
    tree["by"] = reading.by;
    return tree;
}

Json issue_json(const store::Issue& issue) {
    Json files = Json::array();
    for (const store::PaperFile& file : issue.files) {
        files.push_back({{"name", file.name},
                         {"title", file.title},
                         {"type", file.type},
                         {"bytes", file.size},
                         {"url", "/api/papers/" + std::to_string(issue.issue) + "/" + file.name}});
    }
    return {{"issue", issue.issue},       {"at", issue.at},     {"by", issue.by},
            {"revision", issue.revision}, {"what", issue.what}, {"files", std::move(files)}};
}

store::Act act_of(const Call& call, const std::string& what) {
    return {now_text(), undone(call.request.headers.by).value_or(""), what};
}

long number_of(const std::string& text) {
    if (text.empty() || text.size() > 15) return -1;
    long number = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return -1;
        number = number * 10 + (c - '0');
    }
    return number;
}

}  // namespace toft::server
