#include "door/pairing.h"

#include "door/secret.h"

#include <algorithm>
#include <cmath>

namespace toft::server {

namespace {

/// As it was meant: capital letters, nothing between them.
std::string bare(const std::string& typed) {
    std::string code;
    for (const char c : typed) {
        if (c == ' ' || c == '-') continue;
        code += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return code;
}

}  // namespace

std::string Pairing::renew(double now) {
    {
        const std::lock_guard lock(mutex_);
        code_ = random_letters(code_length, code_letters);
        made_ = now;
        wrong_ = 0;
        next_try_ = now;
    }
    return shown(now);
}

std::optional<std::string> Pairing::renewed_if_expired(double now) {
    {
        const std::lock_guard lock(mutex_);
        if (valid(now)) return std::nullopt;
        code_ = random_letters(code_length, code_letters);
        made_ = now;
    }
    return shown(now);
}

std::string Pairing::shown(double now) const {
    const std::lock_guard lock(mutex_);
    if (!valid(now)) return "";
    return code_.substr(0, code_length / 2) + "-" + code_.substr(code_length / 2);
}

double Pairing::seconds_left(double now) const {
    const std::lock_guard lock(mutex_);
    return code_.empty() ? 0 : std::max(0.0, made_ + code_life - now);
}

Pairing::Answer Pairing::knock(const std::string& code, double now) {
    const std::lock_guard lock(mutex_);
    if (now < next_try_) return {Knock::wait, next_try_ - now};
    if (!valid(now)) return {Knock::expired, 0};
    if (same_secret(bare(code), code_)) {
        code_.clear();
        wrong_ = 0;
        return {Knock::let_in, 0};
    }
    ++wrong_;
    if (wrong_ < free_tries) return {Knock::wrong, 0};
    const double wait = std::min(longest_wait, std::ldexp(first_wait, wrong_ - free_tries));
    next_try_ = now + wait;
    return {Knock::wrong, wait};
}

}  // namespace toft::server
