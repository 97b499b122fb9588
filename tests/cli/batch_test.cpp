// A batch: a line of answers for each line of jobs, in order, whatever a line holds, whatever stops
// it, and whatever spreads it.

#include "cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace toft::cli {
namespace {

using Json = nlohmann::json;

/// A job of examples/ on one line, without its line feed.
std::string job_line(const std::string& name) {
    return nlohmann::ordered_json::parse(text_of(example(name))).dump();
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

/// So many jobs, each with a title of its own, a bad line among every five.
std::string many_jobs(int count) {
    const Json shed = Json::parse(text_of(example("tt-shed")));
    std::string text;
    for (int i = 0; i < count; ++i) {
        Json job = shed;
        job["title"] = "Shed " + std::to_string(i);
        text += (i % 5 == 3 ? "no job" : job.dump()) + "\n";
    }
    return text;
}

class Batch : public ::testing::Test {
protected:
    std::string path(const std::string& name) const { return program_.folder() / name; }
    std::string text(const std::string& name) const { return text_of(path(name)); }

    /// A batch that lists one scheme an answer.
    Ran batch(std::vector<std::string> arguments, const std::string& input = "") const {
        arguments.insert(arguments.begin(), {"batch", "--schemes", "1"});
        return program_.run(arguments, input);
    }

    /// The command of such a batch.
    static std::vector<std::string> command(const std::vector<std::string>& arguments) {
        std::vector<std::string> words{program_path(), "batch", "--schemes", "1"};
        words.insert(words.end(), arguments.begin(), arguments.end());
        return words;
    }

    Ends ends(int in = -1, int out = -1) const {
        return {in, out, path("error.tmp"), program_.folder().string()};
    }

    std::size_t size(const std::string& name) const {
        std::error_code error;
        const auto bytes = std::filesystem::file_size(path(name), error);
        return error ? 0 : static_cast<std::size_t>(bytes);
    }

    Program program_;
};

TEST_F(Batch, AnswersAreThoseOfDesignWithoutItsTime) {
    const Ran ran = program_.run({"batch"}, job_line("demo") + "\n" + job_line("tt-shed") + "\n");
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.error, "");
    const auto lines = lines_of(ran.out);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(ran.out.back(), '\n');
    for (const auto& [name, line] : {std::pair{"demo", lines[0]}, std::pair{"tt-shed", lines[1]}}) {
        Json alone = Json::parse(program_.run({"design", example(name), "--json"}).out);
        alone["search"]["milliseconds"] = 0;
        EXPECT_EQ(Json::parse(line), alone) << name;
    }
}

TEST_F(Batch, AnAnswerListsNoMoreSchemesThanWanted) {
    const Ran ran = batch({}, job_line("tt-shed"));
    const Json answer = Json::parse(ran.out);
    ASSERT_EQ(answer["schemes"].size(), 1u);
    const Ran design = program_.run({"design", example("tt-shed"), "--json"});
    EXPECT_EQ(answer["schemes"][0], Json::parse(design.out)["schemes"][0]);
}

TEST_F(Batch, ABadLineIsAFaultLineAndNoStop) {
    const std::string job = job_line("tt-shed");
    const std::string nul("\0\0", 2);
    const std::vector<std::pair<std::string, std::string>> bad{
        {"", "missing"},
        {" \t", "missing"},
        {"\r", "missing"},
        {"{", "not-json"},
        {nul, "not-json"},
        {job.substr(0, 40) + nul + job.substr(40), "not-json"},
        {"{\"title\": \"\xff\"}", "not-json"},
        {"[]", "wrong-kind"},
        {std::string(5000, '['), "too-deep"},
        {"{\"title\": \"" + std::string(3u << 20, 'x') + "\"}", "too-large"},
        {job + job, "not-json"}};
    std::string input;
    for (const auto& [line, code] : bad) input += line + "\n" + job + "\r\n";
    const Ran ran = batch({}, input + "{\"format\": \"toft-job/1\"}");
    EXPECT_EQ(ran.code, 0);
    EXPECT_NE(ran.error.find("12 of 23 lines are at fault"), std::string::npos) << ran.error;
    const auto lines = lines_of(ran.out);
    ASSERT_EQ(lines.size(), 2 * bad.size() + 1);
    for (std::size_t i = 0; i < bad.size(); ++i) {
        const Json fault = Json::parse(lines[2 * i]);
        EXPECT_EQ(fault["format"], "toft-faults/1") << i;
        EXPECT_EQ(fault["faults"][0]["code"], bad[i].second) << i;
        EXPECT_EQ(lines[2 * i + 1], lines[1]) << "the job after line " << i;
        EXPECT_EQ(Json::parse(lines[1])["format"], "toft-answer/1");
    }
    EXPECT_GT(Json::parse(lines.back())["faults"].size(), 1u) << "all faults of a line at once";
}

TEST_F(Batch, NothingIsAnsweredWithNothing) {
    const Ran ran = batch({}, "");
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.out + ran.error, "");
}

TEST_F(Batch, HowManyWorkAtOnceChangesNothing) {
    // The first job takes the longest: those after it wait for it.
    const std::string input = job_line("garage-gym-stable") + "\n" + many_jobs(12);
    const Ran one = batch({"-t", "1"}, input);
    EXPECT_EQ(lines_of(one.out).size(), 13u);
    EXPECT_EQ(batch({"-t", "2"}, input).out, one.out);
    EXPECT_EQ(batch({"-t", "7"}, input).out, one.out);
    EXPECT_EQ(batch({}, input).out, one.out);
}

TEST_F(Batch, WhoReadsNoAnswersIsSentNoMore) {
    Pipe jobs;
    Pipe answers;
    fcntl(jobs.write, F_SETFL, O_NONBLOCK);
    Process process(command({"-t", "2"}), ends(jobs.read, answers.write));
    const std::string job = job_line("tt-shed") + "\n";
    const auto put = [&] { return write(jobs.write, job.data(), job.size()) > 0; };
    // Taken: what the pipe and a block of the reader hold, eight jobs a thread, and as many jobs as
    // have answers that fit into the other pipe.
    const std::size_t most = (3 * 65536) / job.size() + 40;
    std::size_t taken = 0;
    for (int idle = 0; idle < 200 && taken < 4 * most;) {
        idle = put() ? 0 : idle + 1;
        taken += idle == 0 ? 1 : 0;
        if (idle > 0) std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    EXPECT_LT(taken, most);
    EXPECT_GT(taken, 16u);
    EXPECT_TRUE(process.runs());
}

TEST_F(Batch, AnswersComeWhileMoreJobsAreAwaited) {
    Pipe jobs;
    Process process(command({"-o", "answers"}), ends(jobs.read));
    const std::string job = job_line("tt-shed") + "\n";
    for (std::size_t i = 1; i <= 3; ++i) {
        ASSERT_EQ(write(jobs.write, job.data(), job.size()), static_cast<ssize_t>(job.size()));
        ASSERT_TRUE(soon([&] { return lines_of(text("answers")).size() == i; })) << i;
    }
    jobs.close_write();
    jobs.close_read();
    EXPECT_EQ(process.wait(), 0);
}

TEST_F(Batch, KilledAgainAndAgainItEndsAsThoughUndisturbed) {
    program_.file("jobs", many_jobs(60));
    const Ran whole = batch({"jobs"});
    ASSERT_EQ(lines_of(whole.out).size(), 60u);
    int killed = 0;
    for (std::size_t wanted = 1; wanted < whole.out.size(); wanted += whole.out.size() / 6) {
        Process process(command({"jobs", "-t", "1", "-o", "answers", "--resume"}), ends());
        ASSERT_TRUE(soon([&] { return size("answers") >= wanted || !process.runs(); }));
        process.send(SIGKILL);
        if (process.wait() == -SIGKILL && size("answers") < whole.out.size()) ++killed;
        EXPECT_EQ(whole.out.rfind(text("answers"), 0), 0u) << "nothing but the beginning is there";
    }
    EXPECT_GE(killed, 2);
    const Ran last = batch({"jobs", "-o", "answers", "--resume"});
    EXPECT_EQ(last.code, 0);
    EXPECT_EQ(text("answers"), whole.out);
    EXPECT_EQ(batch({"jobs", "-o", "answers", "--resume"}).code, 0) << "nothing is left to do";
    EXPECT_EQ(text("answers"), whole.out);
}

TEST_F(Batch, WhereverAFileOfAnswersBreaksOffItIsGoneOnWith) {
    program_.file("jobs", many_jobs(6));
    const std::string whole = batch({"jobs"}).out;
    const std::size_t first = whole.find('\n');
    for (const std::size_t kept : {std::size_t{0}, std::size_t{1}, std::size_t{30}, first,
                                   first + 1, first + 2, whole.size() - 1, whole.size()}) {
        program_.file("answers", whole.substr(0, kept));
        EXPECT_EQ(batch({"jobs", "-o", "answers", "--resume"}).code, 0) << kept;
        EXPECT_EQ(text("answers"), whole) << kept;
    }
}

TEST_F(Batch, AskedToStopItFinishesWhatIsBegunAndGoesOnLater) {
    program_.file("jobs", many_jobs(60));
    const std::string whole = batch({"jobs"}).out;
    for (const int signal : {SIGINT, SIGTERM}) {
        std::filesystem::remove(path("answers"));
        Process process(command({"jobs", "-t", "2", "-o", "answers"}), ends());
        ASSERT_TRUE(soon([&] { return size("answers") > 0; }));
        process.send(signal);
        EXPECT_EQ(process.wait(), 6) << signal;
        const std::string part = text("answers");
        EXPECT_LT(part.size(), whole.size());
        EXPECT_EQ(part.back(), '\n');
        EXPECT_EQ(whole.rfind(part, 0), 0u);
        EXPECT_NE(text("error.tmp").find("stopped after"), std::string::npos);
        EXPECT_NE(text("error.tmp").find("--resume goes on"), std::string::npos);
        EXPECT_EQ(batch({"jobs", "-o", "answers", "--resume"}).code, 0);
        EXPECT_EQ(text("answers"), whole);
    }
}

TEST_F(Batch, WaitingForJobsItStopsAtOnce) {
    Pipe jobs;
    Process process(command({"-o", "answers"}), ends(jobs.read));
    const std::string job = job_line("tt-shed") + "\n";
    ASSERT_GT(write(jobs.write, job.data(), job.size()), 0);
    ASSERT_TRUE(soon([&] { return size("answers") > 0; }));
    process.send(SIGINT);
    EXPECT_EQ(process.wait(), 6);
    EXPECT_EQ(lines_of(text("answers")).size(), 1u);
}

TEST_F(Batch, ASecondCtrlCEndsItAtOnce) {
    // Standard output that nobody reads keeps it from finishing what is begun.
    program_.file("jobs", many_jobs(400));
    Pipe answers;
    Process process(command({"jobs"}), ends(-1, answers.write));
    char byte = 0;
    ASSERT_EQ(read(answers.read, &byte, 1), 1);
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    process.send(SIGINT);
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
    EXPECT_TRUE(process.runs());
    process.send(SIGINT);
    EXPECT_EQ(process.wait(), -SIGINT);
}

TEST_F(Batch, NoFileIsSpoilt) {
    program_.file("jobs", many_jobs(2));
    program_.file("letter", "Dear Ada,\nthe shed is finished.\n");
    const auto refused = [&](const std::vector<std::string>& arguments, const std::string& file,
                             const char* says) {
        const std::string before = text(file);
        const Ran ran = batch(arguments);
        EXPECT_EQ(ran.code, 2) << says;
        EXPECT_NE(ran.error.find(says), std::string::npos) << ran.error;
        EXPECT_EQ(text(file), before) << says;
    };
    refused({"jobs", "-o", "letter"}, "letter", "is there already");
    refused({"jobs", "-o", "letter", "--resume"}, "letter", "does not hold answers");
    program_.file("more-jobs", many_jobs(3));
    refused({"jobs", "-o", "more-jobs", "--resume"}, "more-jobs", "does not hold answers");
    refused({"jobs", "-o", "jobs", "--resume"}, "jobs", "holds the jobs");
    refused({"no-jobs", "-o", "new"}, "new", "cannot be read");
    refused({".", "-o", "new"}, "new", "is a folder");
    refused({"jobs", "-o", "none/new"}, "new", "cannot be written");
    ASSERT_EQ(batch({"jobs", "-o", "answers"}).code, 0);
    program_.file("jobs", many_jobs(1));
    refused({"jobs", "-o", "answers", "--resume"}, "answers", "more answers than there are jobs");
    EXPECT_EQ(batch({"jobs", "--resume"}).code, 4) << "go on with what?";
}

TEST_F(Batch, AFullDiskIsSaid) {
    program_.file("jobs", many_jobs(40));
    const Ran ran = batch({"jobs", "-o", "/dev/full"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_NE(ran.error.find("no more answers can be written"), std::string::npos) << ran.error;
}

TEST_F(Batch, TwoRunsDoNotWriteOneFile) {
    Pipe jobs;
    Process first(command({"-o", "answers"}), ends(jobs.read));
    const std::string job = job_line("tt-shed") + "\n";
    ASSERT_GT(write(jobs.write, job.data(), job.size()), 0);
    ASSERT_TRUE(soon([&] { return size("answers") > 0; }));
    const Ran second = batch({"-o", "answers", "--resume"}, job);
    EXPECT_EQ(second.code, 2);
    EXPECT_NE(second.error.find("another run"), std::string::npos) << second.error;
}

/// GNU parallel cuts the jobs into parts, a process each, and puts the answers in order.
class SpreadBatch : public Batch {
protected:
    /// Answers of the jobs in `jobs`, so spread.
    std::string spread(const std::string& parallel, const std::string& toft) const {
        const std::string script = "PARALLEL_HOME=. TMPDIR=. parallel --will-cite " + parallel +
                                   " " + program_path() + " batch --schemes 1 " + toft +
                                   " >answers";
        Process process({"sh", "-c", script}, ends());
        EXPECT_EQ(process.wait(), 0) << text("error.tmp");
        return text("answers");
    }
};

TEST_F(SpreadBatch, GnuParallelSpreadsAPipe) {
    program_.file("jobs", many_jobs(30));
    const std::string alone = batch({"jobs"}).out;
    ASSERT_EQ(lines_of(alone).size(), 30u);
    EXPECT_EQ(spread("--pipe -k -j2 --block 8k", "-t1 <jobs"), alone);
    EXPECT_EQ(spread("--pipe -k -j2 -N7", "-t1 <jobs"), alone);
    EXPECT_NE(text("error.tmp").find("of 7 lines are at fault"), std::string::npos)
        << "it was spread: " << text("error.tmp");
}

TEST_F(SpreadBatch, GnuParallelSpreadsAFile) {
    program_.file("jobs", many_jobs(30));
    EXPECT_EQ(spread("--pipepart -a jobs -k -j2 --block -2", "-t1"), batch({"jobs"}).out);
}

}  // namespace
}  // namespace toft::cli
