#pragma once
// A body of JSON read key by key, every fault noted.

#include "codec/reader.h"
#include "http/json.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::server {

class Form {
public:
    explicit Form(const std::string& body);
    Form(const Form&) = delete;
    Form& operator=(const Form&) = delete;

    /// A text of at most `most` bytes, which may be empty; empty when left out.
    std::string text(const char* key, std::size_t most = 2000);
    /// One that must be there and say something.
    std::string needed(const char* key, std::size_t most = 2000);
    /// An object, as JSON text; empty when left out.
    std::string document(const char* key, bool required = true);
    std::optional<double> number(const char* key, codec::Range range, bool required = false);
    long whole(const char* key);                       ///< 0 to 2^53, required
    std::optional<long> maybe_whole(const char* key);  ///< 1 to 2^53
    bool flag(const char* key);                        ///< required
    std::vector<std::string> texts(const char* key);

    /// True where nothing is at fault. Refuses all keys that were not asked for: call last.
    bool fine();
    void fault(Fault fault) { faults_.push_back(std::move(fault)); }
    const Faults& faults() const { return faults_; }

private:
    const Json* takes(const char* key, bool required);

    Json tree_;
    Faults faults_;
    std::optional<codec::Reader> reader_;
};

/// The refusal that faults come to: 404 for what is not there, 409 for what came too late, 413,
/// 415, 422 for what does not hold water, 503 and 500 for the store's own trouble.
Response refused(const Faults& faults);

/// The JSON tree of a text of our own store; null where it holds none.
Json tree_of(const std::string& text);

}  // namespace toft::server
