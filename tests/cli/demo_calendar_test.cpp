#include "demo_calendar.h"

#include <QDateTime>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

std::int64_t at(const char* local) {
  return QDateTime::fromString(QString::fromLatin1(local) + QStringLiteral("+01:00"), Qt::ISODate).toMSecsSinceEpoch();
}

}  // namespace

TEST_CASE("working days are Monday to Friday, the first and the last as said") {
  CHECK(cli::morning_of(0) == at("2020-01-06T08:00:00"));
  CHECK(cli::morning_of(4) == at("2020-01-10T08:00:00"));
  CHECK(cli::morning_of(5) == at("2020-01-13T08:00:00"));
  CHECK(cli::morning_of(cli::demo_working_days - 1) == at("2026-11-20T08:00:00"));
}

TEST_CASE("work goes on when the workshop opens again") {
  CHECK(cli::at_work(at("2020-01-07T10:15:00")) == at("2020-01-07T10:15:00"));
  CHECK(cli::at_work(at("2020-01-07T16:59:59")) == at("2020-01-07T16:59:59"));
  CHECK(cli::at_work(at("2020-01-07T17:04:00")) == at("2020-01-08T08:04:00"));
  CHECK(cli::at_work(at("2020-01-07T05:00:00")) == at("2020-01-07T08:00:00"));
  CHECK(cli::at_work(at("2020-01-10T17:02:00")) == at("2020-01-13T08:02:00"));
  CHECK(cli::at_work(at("2020-01-11T12:00:00")) == at("2020-01-13T08:00:00"));
  CHECK(cli::at_work(at("2020-01-12T12:00:00")) == at("2020-01-13T08:00:00"));
}

TEST_CASE("whatever the moment, people are at work afterwards, and never before it") {
  const std::int64_t begin = at("2023-12-29T00:00:00");
  for (std::int64_t step = 0; step < 5000; ++step) {
    const std::int64_t moment = begin + step * 7 * 60'000;
    const std::int64_t working = cli::at_work(moment);
    const QDateTime there = QDateTime::fromMSecsSinceEpoch(working, Qt::OffsetFromUTC, cli::demo_offset_min * 60);
    CHECK(working >= moment);
    CHECK(there.date().dayOfWeek() <= 5);
    CHECK(there.time() >= QTime(8, 0));
    CHECK(there.time() < QTime(17, 0));
    CHECK(cli::at_work(working) == working);
  }
}
