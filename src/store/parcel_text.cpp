#include "codec/document.h"
#include "store/base64.h"
#include "store/parcel.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

using codec::Json;

/// "key":"text" with all that JSON asks for.
std::string said(const char* key, const std::string& text) {
    return fmt::format("\"{}\":{}", key,
                       Json(text).dump(-1, ' ', false, Json::error_handler_t::replace));
}

std::string numbered(const char* key, std::optional<long> number) {
    return fmt::format("\"{}\":{}", key, number ? std::to_string(*number) : "null");
}

std::string who(const Act& act) { return said("at", act.at) + "," + said("by", act.by); }

std::string bytes_said(const std::string& bytes) {
    return "\"base64\":\"" + to_base64(bytes) + "\"";
}

/// The job's own text goes in as it is: it is JSON already.
std::string worded(const ParcelRevision& revision) {
    return fmt::format("{{{},{},{},{},{},\n\"job\":{}}}", numbered("revision", revision.revision),
                       numbered("parent", revision.parent), numbered("redo", revision.redo),
                       who(revision.act), said("what", revision.act.what), revision.text);
}

std::string worded(const Attached<NewPhoto>& photo) {
    return fmt::format("{{{},{},{},{},{},{}}}", said("fact", photo.what.fact),
                       numbered("revision", photo.revision), said("note", photo.what.note),
                       said("type", photo.what.type), who(photo.act), bytes_said(photo.what.bytes));
}

std::string worded(const Attached<NewReading>& reading) {
    return fmt::format("{{{},{},\"value\":{},{},{},{},{}}}", said("fact", reading.what.fact),
                       numbered("revision", reading.revision), Json(reading.what.value).dump(),
                       said("unit", reading.what.unit), said("instrument", reading.what.instrument),
                       said("note", reading.what.note), who(reading.act));
}

std::string worded(const PaperFile& file);
std::string worded(const Attached<NewIssue>& issue);

template <class T>
std::string list(const char* key, const std::vector<T>& items) {
    std::string text = fmt::format("\"{}\":[", key);
    for (std::size_t i = 0; i < items.size(); ++i) {
        text += (i ? ",\n" : "\n") + worded(items[i]);
    }
    return text + "]";
}

std::string worded(const PaperFile& file) {
    return fmt::format("{{{},{},{},{}}}", said("name", file.name), said("title", file.title),
                       said("type", file.type), bytes_said(file.bytes));
}

std::string worded(const Attached<NewIssue>& issue) {
    return fmt::format("{{{},{},{},{}}}", numbered("revision", issue.revision), who(issue.act),
                       said("what", issue.act.what), list("files", issue.what.files));
}

}  // namespace

std::string parcel_text(const Parcel& parcel) {
    return fmt::format("{{{},\"archived\":{},{},{},{},\n{},\n{},\n{},\n{}}}", said("id", parcel.id),
                       parcel.archived, numbered("current", parcel.current),
                       said("changed_at", parcel.changed.at), said("changed_by", parcel.changed.by),
                       list("revisions", parcel.revisions), list("photos", parcel.photos),
                       list("readings", parcel.readings), list("issues", parcel.issues));
}

}  // namespace toft::store
