#include "server/form.h"

#include "http/problem.h"

#include <algorithm>

namespace toft::server {

namespace {

constexpr double largest_whole = 9007199254740992.0;  // 2^53

struct Said {
    const char* code;
    unsigned status;
    const char* title;
};

constexpr Said statuses[] = {
    {"no-such-job", 404, "there is no such job"},
    {"no-such-revision", 404, "there is no such revision"},
    {"no-such-photo", 404, "there is no such photo"},
    {"no-such-paper", 404, "there is no such paper"},
    {"old-base", 409, "the job was changed meanwhile"},
    {"nothing-to-undo", 409, "there is nothing to undo"},
    {"nothing-to-redo", 409, "there is nothing to redo"},
    {"taken", 409, "something else has that id"},
    {"photo-size", 413, "the photo is too large"},
    {"too-large", 413, "there is too much of it"},
    {"photo-type", 415, "that is no picture that can be kept"},
    {"disk-full", 503, "the disk is full"},
    {"read-only", 503, "the store cannot be written"},
    {"locked", 503, "the store is held by another program"},
    {"spoilt", 500, "the store is damaged"},
    {"disk", 500, "the store cannot be read or written"},
    {"program", 500, "toft itself is at fault"},
    {"font", 500, "the letters of the papers are not there"},
};

}  // namespace

Response refused(const Faults& faults) {
    for (const Said& said : statuses) {
        for (const Fault& fault : faults) {
            if (fault.code == said.code) return problem(said.status, said.title, faults);
        }
    }
    return problem(422, "it cannot be done as it stands", faults);
}

Json tree_of(const std::string& text) { return Json::parse(text, nullptr, false); }

Form::Form(const std::string& body) : tree_(Json::object()) {
    auto read = codec::parse_document(body);
    if (!read) {
        faults_ = read.error();
    } else if (!read->is_object()) {
        faults_.push_back({"wrong-kind", "", "the body must be an object", "", {}});
    } else {
        tree_ = std::move(*read);
        reader_.emplace(tree_, "", faults_);
    }
}

const Json* Form::takes(const char* key, bool required) {
    if (!reader_) return nullptr;
    const Json* node = reader_->takes(key);
    if (!node && required) {
        reader_->fault("missing", key, std::string(key) + " is missing; it must be stated");
    }
    return node;
}

std::string Form::text(const char* key, std::size_t most) {
    const Json* node = takes(key, false);
    if (!node) return {};
    if (!node->is_string()) {
        reader_->fault("wrong-kind", key, std::string(key) + " must be text");
        return {};
    }
    std::string text = node->get<std::string>();
    if (text.size() > most) {
        reader_->fault("out-of-range", key,
                       std::string(key) + " has more than " + std::to_string(most) + " bytes");
        return {};
    }
    return text;
}

std::string Form::needed(const char* key, std::size_t most) {
    if (!reader_) return {};
    if (!reader_->has(key)) {
        takes(key, true);
        return {};
    }
    std::string said = text(key, most);
    if (said.empty() && faults_.empty()) {
        reader_->fault("out-of-range", key, std::string(key) + " is empty; it must say something");
    }
    return said;
}

std::string Form::document(const char* key, bool required) {
    const Json* node = takes(key, required);
    if (!node) return {};
    if (!node->is_object()) {
        reader_->fault("wrong-kind", key, std::string(key) + " must be an object");
        return {};
    }
    return node->dump();
}

std::optional<double> Form::number(const char* key, codec::Range range, bool required) {
    return reader_ ? reader_->number(key, range, required) : std::nullopt;
}

std::optional<long> Form::maybe_whole(const char* key) {
    const auto found = number(key, {1, largest_whole, true}, false);
    return found ? std::optional(static_cast<long>(*found)) : std::nullopt;
}

long Form::whole(const char* key) {
    const auto found = number(key, {0, largest_whole, true}, true);
    return found ? static_cast<long>(*found) : 0;
}

bool Form::flag(const char* key) {
    const Json* node = takes(key, true);
    if (!node) return false;
    if (!node->is_boolean()) {
        reader_->fault("wrong-kind", key, std::string(key) + " must be true or false");
        return false;
    }
    return node->get<bool>();
}

std::vector<std::string> Form::texts(const char* key) {
    std::vector<std::string> all;
    const Json* node = takes(key, false);
    if (!node) return all;
    bool fine = node->is_array() && node->size() <= 100;
    for (const Json& one : fine ? *node : Json::array()) {
        fine = fine && one.is_string();
        if (fine) all.push_back(one.get<std::string>());
    }
    if (!fine) reader_->fault("wrong-kind", key, std::string(key) + " must be a list of words");
    return all;
}

bool Form::fine() {
    if (reader_) reader_->finish();
    return faults_.empty();
}

}  // namespace toft::server
