#pragma once
// The body of a question, read key by key: every fault is noted with its pointer. Private to
// request.

#include "codec/reader.h"
#include "request/request.h"

#include <optional>
#include <string>

namespace toft::request {

/// A body larger than a job and a price book together is not read.
inline constexpr std::size_t largest_body = 3u << 20;  ///< bytes
inline constexpr std::size_t longest_key = 8000;       ///< bytes of a scheme's key: a part a run

/// A job with what it is worked out from.
struct Work {
    const Stock& stock;
    site::Job job;

    answer::Question question() const { return {stock.catalogue, stock.book, job}; }
};

class Body {
public:
    explicit Body(std::string_view text);
    Body(const Body&) = delete;
    Body& operator=(const Body&) = delete;

    /// A text of at most `most` bytes; none when left out.
    std::optional<std::string> text(const char* key, std::size_t most = 200);
    std::string needed(const char* key);
    std::optional<int> whole(const char* key, codec::Range range);
    std::optional<double> number(const char* key, codec::Range range);
    bool flag(const char* key);

    /// The price book that the body names, or the invented one; null where it is at fault. Call
    /// once, before `work`.
    const Stock* stock(Bench& bench);

    /// Job and prices; refuses all keys that were not asked for. Call last. None where anything is
    /// at fault.
    std::optional<Work> work(Bench& bench);

    /// The same for a body without a job: true where nothing is at fault.
    bool finish();

    void fault(Fault fault) { faults_.push_back(std::move(fault)); }
    const Faults& faults() const { return faults_; }
    std::string faults_text() const;

private:
    const codec::Json* takes(const char* key);

    codec::Json tree_;
    Faults faults_;
    std::optional<codec::Reader> reader_;  ///< none where the body is no object
};

/// What a design, and what is solved many times over, asks whether to go on. `asked` must outlive
/// it.
std::function<bool(const answer::Progress&)> told(const Asked& asked);
std::function<bool(long)> counted(const Asked& asked);

/// One fault as toft-faults/1.
std::string fault_text(const char* code, const char* pointer, std::string says,
                       std::string nearest = "", std::vector<std::string> allowed = {});

}  // namespace toft::request
