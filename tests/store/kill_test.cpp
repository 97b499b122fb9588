// Programs killed at any moment, and programs that save at once. What was said to be saved is
// there.
//   TOFT_KILLS  how many are killed (1000)
//   TOFT_SEED   of the moments (1066)

#include "store/database.h"
#include "trying.h"

#include <csignal>
#include <cstdlib>
#include <map>
#include <random>

namespace toft::store {
namespace {

using namespace testing;

long asked(const char* name, long usual) {
    const char* value = std::getenv(name);
    return value ? std::strtol(value, nullptr, 10) : usual;
}

/// What a saving program says once the store said so.
struct Said {
    enum Kind : long { saved, photographed, undone } kind;
    long number;   ///< of the revision now current, or of the photo
    long content;  ///< from which the content can be made again
};

/// A job of up to a few pages of the file.
std::string content(long number) {
    const auto length = static_cast<std::size_t>(number * 7919 % 9000);
    return R"({"n":)" + std::to_string(number) + R"(,"text":")" +
           std::string(length, static_cast<char>('a' + number % 26)) + "\"}";
}

std::string snapshot(long number) { return "\xff\xd8\xff" + content(number); }

void say(int pipe, const Said& said) {
    if (write(pipe, &said, sizeof said) != static_cast<ssize_t>(sizeof said)) _exit(4);
}

/// Saves, photographs and undoes until it is killed.
int save_on(const std::string& path, int pipe, long first) {
    auto store = open(path);
    if (!store || !create(*store, "a", "{}", act())) return 1;
    auto state = load(*store, "a");
    for (long number = first; state; ++number) {
        if (number % 5 == 0) {
            const auto photo =
                add_photo(*store, {"a", "", "", "image/jpeg", snapshot(number)}, act());
            if (!photo) return 2;
            say(pipe, {Said::photographed, photo->photo, number});
        } else if (number % 7 == 0 && state->can_undo) {
            state = undo(*store, "a", state->revision, act());
            if (state) say(pipe, {Said::undone, state->revision, number});
        } else {
            const auto saved = save(*store, {"a", state->revision, content(number)}, act());
            if (!saved || !saved->saved) return 3;
            state = saved->state;
            say(pipe, {Said::saved, state->revision, number});
        }
    }
    return 5;
}

/// What one file was said to hold.
struct Promised {
    std::map<long, long> revisions, photos;  ///< number to content
    long current = 0;
    long next = 1;  ///< content that no program has written yet
};

/// Lets a program save and kills it after so many microseconds.
void run_and_kill(const std::string& path, useconds_t moment, Promised& promised) {
    int pipes[2];
    ASSERT_EQ(pipe(pipes), 0);
    const pid_t child = beside([&] {
        close(pipes[0]);
        return save_on(path, pipes[1], promised.next);
    });
    close(pipes[1]);
    usleep(moment);
    kill(child, SIGKILL);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "it ended by itself with " << WEXITSTATUS(status);
    Said said{};
    while (read(pipes[0], &said, sizeof said) == static_cast<ssize_t>(sizeof said)) {
        promised.next = said.content + 1;
        if (said.kind == Said::photographed) {
            promised.photos[said.number] = said.content;
            continue;
        }
        if (said.kind == Said::saved) promised.revisions[said.number] = said.content;
        promised.current = said.number;
    }
    close(pipes[0]);
    promised.next += 2;  // one may be written whose saying was cut off
}

/// Where the job stands is what was said last, or one step further that nobody heard of.
void expect_current(Store& store, const Promised& promised) {
    const auto state = load(store, "a");
    if (promised.current == 0) return;  // killed before the first word
    ASSERT_TRUE(state) << says(state);
    if (state->revision == promised.current) return;
    if (!promised.revisions.count(state->revision)) return;  // a save nobody heard of
    const auto forth = redo(store, "a", state->revision, act());
    ASSERT_TRUE(forth) << says(forth);
    EXPECT_EQ(forth->revision, promised.current) << "an undo nobody heard of";
}

void expect_promises(const std::string& path, const Promised& promised) {
    auto store = open(path);
    ASSERT_TRUE(store) << says(store);
    EXPECT_EQ(
        *store->database().number("SELECT integrity_check = 'ok' FROM pragma_integrity_check"), 1);
    EXPECT_EQ(*store->database().number("SELECT count(*) FROM pragma_foreign_key_check"), 0);
    for (const auto& [number, made] : promised.revisions) {
        const auto there = revision(*store, "a", number);
        ASSERT_TRUE(there) << "revision " << number << " was said to be saved";
        ASSERT_EQ(there->job, content(made));
    }
    for (const auto& [number, made] : promised.photos) {
        const auto there = photo(*store, number);
        ASSERT_TRUE(there) << "photo " << number << " was said to be saved";
        ASSERT_EQ(there->bytes, snapshot(made));
    }
    expect_current(*store, promised);
}

TEST(Kill, WhatWasSaidToBeSavedIsThereWheneverTheProgramIsKilled) {
    const long kills = asked("TOFT_KILLS", 1000);
    std::mt19937 random(static_cast<unsigned>(asked("TOFT_SEED", 1066)));
    std::size_t saved = 0, photographed = 0;
    for (long done = 0, round = 0; done < kills && !HasFailure(); ++round) {
        const bool on_disk = round % 4 == 3;  // where it mostly waits for the disk when killed
        const Folder folder(on_disk ? std::filesystem::temp_directory_path() : quick_place());
        const unsigned longest = on_disk ? 25000 : 12000;
        Promised promised;
        for (int i = 0; i < 20 && done < kills && !HasFailure(); ++i, ++done) {
            run_and_kill(folder.store(), static_cast<useconds_t>(random() % longest), promised);
            expect_promises(folder.store(), promised);
        }
        saved += promised.revisions.size();
        photographed += promised.photos.size();
    }
    EXPECT_GT(saved, static_cast<std::size_t>(kills / 10)) << "so few saves prove little";
    RecordProperty("saved", static_cast<int>(saved));
    std::printf("%ld kills, %zu saves and %zu photos promised\n", kills, saved, photographed);
}

/// A job in which each of several people has a figure of their own.
std::string figures(const std::string& was, const std::string& who, int count) {
    const std::string key = "\"" + who + "\":";
    const auto at = was.find(key);
    if (at == std::string::npos) {
        return was.substr(0, was.size() - 1) + (was == "{}" ? "" : ",") + key +
               std::to_string(count) + "}";
    }
    const auto from = at + key.size();
    const auto to = was.find_first_of(",}", from);
    return was.substr(0, from) + std::to_string(count) + was.substr(to);
}

int figure(const std::string& text, const std::string& who) {
    const auto at = text.find("\"" + who + "\":");
    return at == std::string::npos ? 0 : std::atoi(text.c_str() + at + who.size() + 3);
}

constexpr int people = 4;
constexpr int changes = 25;

TEST(AtOnce, PeopleWhoChangeDifferentFactsOfOneJobAllFindTheirChange) {
    const Folder folder;
    {
        Store store = opened(folder);
        ASSERT_TRUE(create(store, "a", "{}", act()));
    }
    std::vector<pid_t> children;
    for (int person = 0; person < people; ++person) {
        children.push_back(beside([&] {
            auto store = open(folder.store());
            if (!store) return 1;
            const std::string who = "p" + std::to_string(person);
            auto state = load(*store, "a");
            for (int i = 1; i <= changes; ++i) {
                const auto saved =
                    save(*store, {"a", state->revision, figures(state->job, who, i)}, act("", who));
                if (!saved || !saved->saved) return 2;
                state = saved->state;
            }
            return 0;
        }));
    }
    for (const pid_t child : children) EXPECT_EQ(exit_of(child), 0);
    Store store = opened(folder);
    const std::string all = load(store, "a")->job;
    for (int person = 0; person < people; ++person) {
        EXPECT_EQ(figure(all, "p" + std::to_string(person)), changes) << all;
    }
    EXPECT_EQ(revisions(store, "a")->size(), 1u + people * changes);
}

TEST(AtOnce, PeopleWhoCountUpOneFigureLoseNoCount) {
    const Folder folder;
    {
        Store store = opened(folder);
        ASSERT_TRUE(create(store, "a", R"({"n":0,"mark":""})", act()));
    }
    const auto count_up = [&] {
        auto store = open(folder.store());
        if (!store) return 1;
        auto state = load(*store, "a");
        for (int done = 0; done < changes;) {
            // Two who count to the same number would agree: the mark tells them apart.
            const int next = figure(state->job, "n") + 1;
            const std::string text = R"({"n":)" + std::to_string(next) + R"(,"mark":")" +
                                     std::to_string(getpid()) + "-" + std::to_string(done) + "\"}";
            const auto saved = save(*store, {"a", state->revision, text}, act());
            if (!saved) return 2;
            done += saved->saved ? 1 : 0;
            state = saved->state;
        }
        return 0;
    };
    std::vector<pid_t> children;
    for (int i = 0; i < people; ++i) children.push_back(beside(count_up));
    for (const pid_t child : children) EXPECT_EQ(exit_of(child), 0);
    Store store = opened(folder);
    EXPECT_EQ(figure(load(store, "a")->job, "n"), people * changes);
}

}  // namespace
}  // namespace toft::store
