#include "request/body.h"

#include "codec/answer.h"
#include "codec/job_parts.h"

namespace toft::request {

namespace {

/// A pointer into the job where it leads into it.
std::string into_job(const std::string& pointer) {
    constexpr std::string_view job = "/job";
    if (pointer.compare(0, job.size(), job) != 0) return pointer;
    if (pointer.size() > job.size() && pointer[job.size()] != '/') return pointer;
    return pointer.substr(job.size());
}

}  // namespace

std::string fault_text(const char* code, const char* pointer, std::string says, std::string nearest,
                       std::vector<std::string> allowed) {
    return codec::write_faults(
        {{code, pointer, std::move(says), std::move(nearest), std::move(allowed)}});
}

Body::Body(std::string_view text) {
    auto tree = codec::parse_document(text.empty() ? "{}" : text, {largest_body});
    if (!tree) {
        faults_ = tree.error();
        for (Fault& fault : faults_) fault.pointer = into_job(fault.pointer);
        return;
    }
    tree_ = std::move(*tree);
    if (tree_.is_object()) {
        reader_.emplace(tree_, "", faults_);
    } else {
        faults_.push_back({"wrong-kind", "", "what is asked with is one JSON object", "", {}});
    }
}

const codec::Json* Body::takes(const char* key) { return reader_ ? reader_->takes(key) : nullptr; }

std::optional<std::string> Body::text(const char* key, std::size_t most) {
    const codec::Json* node = takes(key);
    if (!node) return std::nullopt;
    if (!node->is_string()) {
        reader_->fault("wrong-kind", key, fmt::format("{} must be text", key));
        return std::nullopt;
    }
    const auto& text = node->get_ref<const std::string&>();
    if (text.size() > most) {
        reader_->fault("out-of-range", key,
                       fmt::format("{} must have at most {} bytes", key, most));
        return std::nullopt;
    }
    return text;
}

std::string Body::needed(const char* key) {
    const auto found = text(key);
    if (!found && reader_ && !reader_->has(key))
        reader_->fault("missing", key, fmt::format("{} must be given", key));
    return found.value_or("");
}

std::optional<int> Body::whole(const char* key, codec::Range range) {
    range.whole = true;
    const auto found = number(key, range);
    if (!found) return std::nullopt;
    return static_cast<int>(*found);
}

std::optional<double> Body::number(const char* key, codec::Range range) {
    if (!reader_) return std::nullopt;
    return reader_->number(key, range);
}

bool Body::flag(const char* key) {
    const codec::Json* node = takes(key);
    if (!node) return false;
    if (!node->is_boolean()) {
        reader_->fault("wrong-kind", key, fmt::format("{} must be true or false", key));
        return false;
    }
    return node->get<bool>();
}

const Stock* Body::stock(Bench& bench) {
    const auto prices = text("prices", codec::largest_document);
    const auto name = text("prices_name");
    return bench.stock(name.value_or("your price book"), prices, faults_);
}

std::optional<Work> Body::work(Bench& bench) {
    const Stock* stock = this->stock(bench);
    const codec::Json* tree = takes("job");
    if (!tree && reader_ && !reader_->has("job"))
        reader_->fault("missing", "job", "the job must be given");
    if (!finish() || !stock || !tree) return std::nullopt;
    auto job = codec::read_job_tree(*tree, stock->catalogue);
    if (!job) {
        faults_ = job.error();
        return std::nullopt;
    }
    return Work{*stock, std::move(*job)};
}

bool Body::finish() {
    if (reader_) reader_->finish();
    return faults_.empty();
}

std::string Body::faults_text() const { return codec::write_faults(faults_); }

}  // namespace toft::request
