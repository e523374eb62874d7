"""Jobs at odd times: entries stand in the order they were made, and each time is told as it was read off the wall."""
import contextlib
import datetime
import json
import sqlite3
import subprocess

from program import DEMO, Bench, main, run, script

HOUR = datetime.timedelta(hours=1)


class Clock(Bench):
    def replayed(self, times):
        """Replays a job with the moment of each command from `times`; gives the entries as rows and the record's text."""
        job = script(DEMO[0])
        job["commands"] = [dict(each, at=at.isoformat(timespec="minutes"))
                           for each, at in zip(job["commands"], times, strict=True)]
        for each in job["commands"]:
            if "file" in each:
                each["file"] = str(DEMO[0].parent / each["file"])
        path, pdf = self.folder / "script.json", self.folder / "record.pdf"
        path.write_text(json.dumps(job), encoding="utf-8")
        status, out, err = run("replay", path, "--store", self.store, "--record", pdf)
        self.assertEqual((status, err), (0, []))
        self.assertEqual(run("check", "--store", self.store)[0], 0)
        accepted = [seq for line in map(json.loads, out[:-1]) for seq in line.get("entries", [])]
        with contextlib.closing(sqlite3.connect(f"file:{self.store}?mode=ro", uri=True)) as database:
            rows = database.execute("SELECT seq, at_ms, offset_min, clock_went_back FROM entry ORDER BY seq").fetchall()
        self.assertEqual([row[0] for row in rows], accepted)
        text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True).stdout
        return rows, text

    def times(self, first, zone=datetime.timezone.utc, step=datetime.timedelta(minutes=3)):
        return [first.replace(tzinfo=zone) + number * step for number in range(len(script(DEMO[0])["commands"]))]

    def marked(self, rows):
        """Entries marked as made after the clock was set back: those whose time is before the one above, no others."""
        marks = [row[0] for row in rows if row[3]]
        self.assertEqual(marks, [row[0] for before, row in zip(rows, rows[1:]) if row[1] < before[1]])
        return marks

    def test_a_clock_set_back_changes_no_order_and_is_marked(self):
        times = self.times(datetime.datetime(2026, 11, 20, 8, 0))
        times[60:] = [each - 2 * HOUR for each in times[60:]]
        rows, text = self.replayed(times)
        marks = self.marked(rows)
        self.assertEqual(len(marks), 1)
        self.assertRegex(text, rf"clock[^.]*\b{marks[0]}\b")

    def test_the_hour_that_comes_twice_is_no_clock_set_back(self):
        summer, winter = (datetime.timezone(hours * HOUR) for hours in (2, 1))
        first = datetime.datetime(2026, 10, 25, 0, 30)
        times = [each if each < datetime.datetime(2026, 10, 25, 3, 0, tzinfo=summer) else each.astimezone(winter)
                 for each in self.times(first, summer)]
        rows, text = self.replayed(times)
        self.assertEqual(self.marked(rows), [])
        self.assertEqual({row[2] for row in rows}, {120, 60})
        self.assertIn("25 Oct 2026 00:30 +02:00", text)
        self.assertRegex(text, r"25 Oct 2026 0\d:\d\d \+01:00")

    def test_a_laptop_that_travels_tells_each_time_with_its_offset(self):
        far = datetime.timezone(datetime.timedelta(hours=-3, minutes=-30))
        times = self.times(datetime.datetime(2026, 11, 20, 8, 0))
        times[100:] = [each.astimezone(far) for each in times[100:]]
        rows, text = self.replayed(times)
        self.assertEqual(self.marked(rows), [])
        self.assertEqual({row[2] for row in rows}, {0, -210})
        self.assertIn("20 Nov 2026 08:00 +00:00", text)
        self.assertRegex(text, r"20 Nov 2026 \d\d:\d\d -03:30")

    def test_leap_days_and_the_year_2100(self):
        for first, told, next_day in ((datetime.datetime(2028, 2, 28, 22, 0), "28 Feb 2028 22:00", "29 Feb"),
                                      (datetime.datetime(2100, 2, 28, 22, 0), "28 Feb 2100 22:00", "1 Mar"),
                                      (datetime.datetime(2099, 12, 31, 22, 0), "31 Dec 2099 22:00", "1 Jan 2100")):
            with self.subTest(told):
                self.store = self.folder / f"{first:%Y}.shimwright"
                rows, text = self.replayed(self.times(first))
                self.assertEqual(self.marked(rows), [])
                self.assertEqual(rows[0][1], first.replace(tzinfo=datetime.timezone.utc).timestamp() * 1000)
                self.assertIn(told, text)
                self.assertIn(next_day, text)


main()
