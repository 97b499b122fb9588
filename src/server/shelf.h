#pragma once
// Things that one thread at a time may use, lent out: another is made when all are out.

#include "base/outcome.h"

#include <functional>
#include <memory>
#include <mutex>
#include <vector>

namespace toft::server {

template <class T>
class Shelf {
public:
    explicit Shelf(std::function<Outcome<T>()> make) : make_(std::move(make)) {}

    /// One of them, given back when it goes.
    class Lease {
    public:
        Lease(Shelf& shelf, std::unique_ptr<T> thing) : shelf_(&shelf), thing_(std::move(thing)) {}
        ~Lease() {
            if (thing_) shelf_->give_back(std::move(thing_));
        }
        Lease(Lease&&) noexcept = default;
        Lease& operator=(Lease&&) = delete;
        T& operator*() const { return *thing_; }
        T* operator->() const { return thing_.get(); }

    private:
        Shelf* shelf_;
        std::unique_ptr<T> thing_;
    };

    Outcome<Lease> take() {
        {
            const std::lock_guard lock(mutex_);
            if (!here_.empty()) {
                auto thing = std::move(here_.back());
                here_.pop_back();
                return Lease(*this, std::move(thing));
            }
        }
        auto made = make_();
        if (!made) return failed(made.error());
        return Lease(*this, std::make_unique<T>(std::move(*made)));
    }

private:
    void give_back(std::unique_ptr<T> thing) {
        const std::lock_guard lock(mutex_);
        here_.push_back(std::move(thing));
    }

    std::function<Outcome<T>()> make_;
    std::mutex mutex_;
    std::vector<std::unique_ptr<T>> here_;
};

}  // namespace toft::server
