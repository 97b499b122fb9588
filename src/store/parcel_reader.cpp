#include "store/parcel_reader.h"

#include "store/base64.h"

#include <fmt/format.h>

namespace toft::store {

using codec::Json;

namespace {

const Json nothing;

constexpr long most = 1l << 40;                // of any count: far from where numbers end
constexpr std::size_t longest_list = 100'000;  // of revisions, photos, …

}  // namespace

ParcelReader::ParcelReader(const Json& node, std::string pointer, Faults& faults)
    : node_(&node), pointer_(std::move(pointer)), faults_(&faults) {
    if (!node_->is_object()) {
        fault("missing", pointer_, "an object belongs here");
        node_ = &nothing;
    }
}

void ParcelReader::fault(const char* code, const std::string& at, std::string says) {
    if (faults_->size() < codec::most_faults) {
        faults_->push_back({code, at, std::move(says), "", {}});
    }
}

const Json* ParcelReader::find(const char* key, const char* kind, bool may_lack) {
    if (node_->is_object()) {
        const auto found = node_->find(key);
        if (found != node_->end() && !found->is_null()) return &*found;
    }
    if (!may_lack) fault("missing", pointer(key), fmt::format("{} belongs here", kind));
    return nullptr;
}

std::string ParcelReader::text(const char* key, bool may_lack) {
    const Json* found = find(key, "a text", may_lack);
    if (!found) return {};
    if (found->is_string()) return found->get<std::string>();
    fault("missing", pointer(key), "a text belongs here");
    return {};
}

long ParcelReader::count(const char* key) {
    const auto found = maybe_count(key);
    if (!found && find(key, "a whole number from 1", false) == nullptr) return 0;
    return found.value_or(0);
}

std::optional<long> ParcelReader::maybe_count(const char* key) {
    const Json* found = find(key, "", true);
    if (!found) return std::nullopt;
    if (found->is_number_unsigned()) {
        const auto number = found->get<unsigned long long>();
        if (number >= 1 && number <= static_cast<unsigned long long>(most)) {
            return static_cast<long>(number);
        }
    }
    fault("missing", pointer(key), "a whole number from 1 belongs here");
    return std::nullopt;
}

double ParcelReader::number(const char* key) {
    const Json* found = find(key, "a number", false);
    if (found && found->is_number()) return found->get<double>();
    if (found) fault("missing", pointer(key), "a number belongs here");
    return 0;
}

bool ParcelReader::truth(const char* key) {
    const Json* found = find(key, "true or false", true);
    if (found && !found->is_boolean()) fault("missing", pointer(key), "true or false belongs here");
    return found && found->is_boolean() && found->get<bool>();
}

std::string ParcelReader::base64(const char* key) {
    const std::string text = this->text(key);
    const auto bytes = from_base64(text);
    if (!bytes) fault("base64", pointer(key), "this is no base64: export it again");
    return bytes.value_or("");
}

std::vector<ParcelReader> ParcelReader::objects(const char* key) {
    std::vector<ParcelReader> items;
    const Json* found = find(key, "a list", true);
    if (found && !found->is_array()) fault("missing", pointer(key), "a list belongs here");
    if (!found || !found->is_array()) return items;
    if (found->size() > longest_list) {
        fault("too-many", pointer(key),
              fmt::format("a list of {} things; at most {} are read", found->size(), longest_list));
        return items;
    }
    for (std::size_t i = 0; i < found->size(); ++i) {
        ParcelReader item((*found)[i], codec::child_pointer(pointer(key), std::to_string(i)),
                          *faults_);
        if ((*found)[i].is_object()) items.push_back(std::move(item));
    }
    return items;
}

std::optional<ParcelReader> ParcelReader::object(const char* key) {
    const Json* found = find(key, "an object", true);
    if (!found) return std::nullopt;
    return ParcelReader(*found, pointer(key), *faults_);
}

const Json& ParcelReader::value(const char* key) {
    const Json* found = find(key, "a job", false);
    return found ? *found : nothing;
}

}  // namespace toft::store
