#pragma once
// How another device on the network comes to be let in: whoever stands before this machine reads a
// code off its screen and types it there. Keeps no clock: seconds are arguments.

#include <mutex>
#include <optional>
#include <string>

namespace toft::server {

/// Letters and digits that are not mistaken for one another, read or heard.
inline constexpr const char* code_letters = "34679ACDEFGHJKMNPQRTWXY";
inline constexpr std::size_t code_length = 8;
inline constexpr double code_life = 15 * 60;     ///< seconds
inline constexpr int free_tries = 4;             ///< wrong codes before waiting begins
inline constexpr double first_wait = 5;          ///< seconds; doubled by each further wrong code
inline constexpr double longest_wait = 60 * 60;  ///< seconds

enum class Knock {
    let_in,
    wrong,    ///< not the code
    expired,  ///< no code is valid now
    wait      ///< too many wrong ones; nothing is looked at before `Answer::wait` is over
};

/// The one code that is valid at a time. For any thread.
class Pairing {
public:
    struct Answer {
        Knock knock = Knock::wrong;
        double wait = 0;  ///< seconds until the next try is looked at
    };

    /// A new code in place of the old one; wrong tries are forgotten.
    std::string renew(double now);

    /// A new code where none is valid: nothing otherwise. Wrong tries are not forgotten.
    std::optional<std::string> renewed_if_expired(double now);

    /// The code, grouped for reading; empty when it is no longer valid.
    std::string shown(double now) const;
    double seconds_left(double now) const;

    /// A try, in any case, with or without blanks and hyphens. The right one is used up.
    Answer knock(const std::string& code, double now);

private:
    bool valid(double now) const { return !code_.empty() && now - made_ <= code_life; }

    mutable std::mutex mutex_;
    std::string code_;
    double made_ = 0;
    int wrong_ = 0;
    double next_try_ = 0;
};

}  // namespace toft::server
