#include "store/store.h"

#include "store/migrations.h"
#include "trying.h"

#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>

namespace toft::store {
namespace {

using namespace testing;

int mode(const std::string& path) {
    struct stat there {};
    return stat(path.c_str(), &there) == 0 ? static_cast<int>(there.st_mode & 0777) : -1;
}

/// Runs SQL on a file as any program might.
void by_hand(const std::string& path, const std::string& sql) {
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
        << sqlite3_errmsg(handle);
    sqlite3_close(handle);
}

/// A file with one job, closed again.
void keep_one(const Folder& folder, int load) {
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(load), act()));
}

TEST(Store, IsKeptForItsUserAlone) {
    const Folder folder;
    const std::string path = folder / "data/toft/toft.sqlite";
    ASSERT_TRUE(make_folder_of(path).empty());
    ASSERT_TRUE(make_folder_of(path).empty()) << "a second time it is there";
    ASSERT_TRUE(open(path));
    EXPECT_EQ(mode(folder / "data/toft"), 0700);
    EXPECT_EQ(mode(path), 0600);
}

TEST(Store, LivesWhereTheXdgBaseDirectorySpecificationPutsData) {
    EXPECT_EQ(*usual_path("/data", "/home/ann"), "/data/toft/toft.sqlite");
    EXPECT_EQ(*usual_path("", "/home/ann"), "/home/ann/.local/share/toft/toft.sqlite");
    EXPECT_EQ(*usual_path("data", "/home/ann"), "/home/ann/.local/share/toft/toft.sqlite")
        << "a path that is not absolute is to be ignored";
    EXPECT_EQ(code(usual_path("", "")), "no-home");
}

TEST(Store, KeepsWhatItHeldWhenOpenedAgain) {
    const Folder folder;
    keep_one(folder, 3000);
    Store store = opened(folder);
    EXPECT_EQ(load(store, "a")->job, job(3000));
}

TEST(Store, CommitsToTheDiskAndWatchesItsReferences) {
    const Folder folder;
    Store store = opened(folder);
    EXPECT_EQ(*store.database().number("PRAGMA synchronous"), 2) << "FULL";
    EXPECT_EQ(*store.database().number("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(*store.database().number("SELECT count(*) FROM pragma_journal_mode "
                                       "WHERE journal_mode = 'wal'"),
              1);
}

TEST(Store, RefusesWhatIsNoStoreAndLeavesItAlone) {
    const Folder folder;
    write_file(folder / "letter", std::string(5000, 'x'));
    EXPECT_EQ(code(open(folder / "letter")), "not-a-store");
    EXPECT_EQ(bytes_of(folder / "letter"), std::string(5000, 'x'));
    by_hand(folder / "other", "CREATE TABLE recipe(name TEXT)");
    const std::string untouched = bytes_of(folder / "other");
    EXPECT_EQ(code(open(folder / "other")), "not-a-store");
    EXPECT_EQ(bytes_of(folder / "other"), untouched);
    EXPECT_EQ(code(open(folder / "no/such/folder")), "cannot-open");
    EXPECT_EQ(code(open(folder.path())), "cannot-open");
}

TEST(Store, RefusesAFileOfANewerProgramAndLeavesItAlone) {
    const Folder folder;
    keep_one(folder, 3000);
    by_hand(folder.store(), "PRAGMA user_version = 1000; PRAGMA wal_checkpoint(TRUNCATE)");
    const std::string untouched = bytes_of(folder.store());
    const auto store = open(folder.store());
    EXPECT_EQ(code(store), "newer-store");
    EXPECT_NE(says(store).find("Use the newer toft"), std::string::npos) << says(store);
    EXPECT_EQ(bytes_of(folder.store()), untouched);
}

/// A file as the first form had it, with one job.
void write_oldest(const Folder& folder) {
    auto database = Database::open(folder.store(), {}, 1);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)
                    ->run("BEGIN; INSERT INTO job VALUES(1, 'old', 1, 0, '2026-01-01', 'Ann');"
                          "INSERT INTO revision VALUES(1, 1, NULL, NULL, '2026-01-01', 'Ann', '',"
                          "'{\"title\":\"Boathouse\"}'); COMMIT")
                    .empty());
}

TEST(Store, BringsAnOlderFileUpToDateWithAllItHolds) {
    const Folder folder;
    write_oldest(folder);
    Store store = opened(folder);
    EXPECT_EQ(*store.database().number("PRAGMA user_version"), newest_version());
    EXPECT_EQ(load(store, "old")->title, "Boathouse");
    EXPECT_EQ(jobs(store, {"boat", false})->size(), 1u) << "old jobs can be found, too";
    EXPECT_TRUE(add_reading(store, {"old", "/title", 1, "ohm", "", ""}, act()));
    EXPECT_TRUE(add_reading(store, {"old", "/title", 1, "ohm", "", "", 1, "sent-1"}, act()));
}

TEST(Store, AMigrationThatFailsLeavesTheOldForm) {
    const Folder folder;
    write_oldest(folder);
    by_hand(folder.store(), "CREATE TABLE words(in_the_way TEXT)");  // the last step will fail
    EXPECT_EQ(code(open(folder.store())), "disk");
    auto database = Database::open(folder.store(), {}, 1);
    ASSERT_TRUE(database);
    EXPECT_EQ(*(*database)->number("PRAGMA user_version"), 1);
    EXPECT_EQ(*(*database)->number("SELECT count(*) FROM sqlite_master WHERE name = 'photo'"), 0)
        << "the step before went well and was taken back";
    by_hand(folder.store(), "DROP TABLE words");
    EXPECT_TRUE(open(folder.store()));
}

TEST(Store, ProgramsThatOpenANewFileAtOnceAllGetIt) {
    for (int round = 0; round < 10; ++round) {
        const Folder folder;
        std::vector<pid_t> children;
        for (int i = 0; i < 4; ++i) {
            children.push_back(beside([&] {
                auto store = open(folder.store());
                if (!store) return 1;
                return create(*store, "job-" + std::to_string(i), job(i), act()) ? 0 : 2;
            }));
        }
        for (const pid_t child : children) EXPECT_EQ(exit_of(child), 0);
        Store store = opened(folder);
        EXPECT_EQ(jobs(store)->size(), 4u);
    }
}

TEST(Store, AFullDiskIsSaidAndNothingIsHalfWritten) {
    const Folder folder;
    Store store = opened(folder, {10000, 200000});
    ASSERT_TRUE(create(store, "a", job(1), act()));
    const std::string large = job(2, std::string(500000, 'x'));
    EXPECT_EQ(code(save(store, {"a", 1, large}, act())), "disk-full");
    EXPECT_EQ(load(store, "a")->revision, 1);
    EXPECT_TRUE(save(store, {"a", 1, job(3)}, act())) << "what fits is still taken";
    EXPECT_EQ(*store.database().number("SELECT count(*) FROM revision"), 2);
}

TEST(Store, AFileThatMayGrowNoMoreIsSaidToo) {
    const Folder folder;
    keep_one(folder, 1);
    const pid_t child = beside([&] {
        Store store = opened(folder);
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{300000, 300000};
        setrlimit(RLIMIT_FSIZE, &limit);
        const auto saved = save(store, {"a", 1, job(2, std::string(900000, 'x'))}, act());
        if (code(saved) != "disk") return 1;
        return load(store, "a")->revision == 1 ? 0 : 2;
    });
    EXPECT_EQ(exit_of(child), 0);
    Store store = opened(folder);
    EXPECT_EQ(load(store, "a")->revision, 1);
}

TEST(Store, AFileThatMayNotBeWrittenIsSaid) {
    const Folder folder;
    keep_one(folder, 1);
    chmod(folder.store().c_str(), 0444);
    chmod(folder.path().c_str(), 0755);
    const pid_t child = beside([&] {
        if (geteuid() == 0 && setuid(65534) != 0) return 2;  // whom modes do not bind
        return code(open(folder.store())) == "read-only" ? 0 : 1;
    });
    EXPECT_EQ(exit_of(child), 0);
}

TEST(Store, AnotherProgramThatHoldsItTooLongIsSaid) {
    const Folder folder;
    Store patient = opened(folder), hasty = opened(folder, {20, 0});
    ASSERT_TRUE(create(patient, "a", job(1), act()));
    ASSERT_TRUE(patient.database().run("BEGIN IMMEDIATE").empty());
    EXPECT_EQ(code(save(hasty, {"a", 1, job(2)}, act())), "locked");
    EXPECT_EQ(load(hasty, "a")->revision, 1) << "reading goes on";
    ASSERT_TRUE(patient.database().run("COMMIT").empty());
    EXPECT_TRUE(save(hasty, {"a", 1, job(2)}, act()));
}

TEST(Store, ADamagedFileIsSaid) {
    const Folder folder;
    {
        Store store = opened(folder);
        ASSERT_TRUE(create(store, "a", job(1, std::string(100000, 'x')), act()));
    }
    std::string bytes = bytes_of(folder.store());
    for (std::size_t i = 4096; i < bytes.size(); ++i) bytes[i] = static_cast<char>(i * 7);
    write_file(folder.store(), bytes);
    auto store = open(folder.store());
    EXPECT_EQ(store ? code(load(*store, "a")) : code(store), "spoilt");
}

TEST(Store, TheFileItselfForbidsToChangeHistory) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    ASSERT_TRUE(issue_papers(store, {"a", 1, {{"p.pdf", "P", "application/pdf", 0, "x"}}}, act()));
    for (const char* sql :
         {"UPDATE revision SET text = '{}'", "DELETE FROM revision",
          "UPDATE paper SET bytes = x'00'", "DELETE FROM paper", "UPDATE issue SET by = 'Bob'",
          "DELETE FROM issue", "UPDATE job SET current = 7", "DELETE FROM job"}) {
        EXPECT_FALSE(store.database().run(sql).empty()) << sql;
    }
}

}  // namespace
}  // namespace toft::store
