"""What make-demo says of its jobs is true of them: asked of the store by plain SQL."""
import collections
import contextlib
import json
import sqlite3
import statistics
import tempfile
import pathlib
import unittest

import program
from program import run

JOBS = 240
HALF_A_YEAR_MS = 180 * 24 * 3600 * 1000
OPENED = "SELECT id, number, vehicle, gearbox, gearbox_serial, opened_at_ms, last_at_ms, standing, pack_serial FROM job"
# Nothing of a row that is drawn by lot, as ids are.
ALL_BUT_IDS = ("SELECT number, vehicle, gearbox_serial, opened_at_ms, last_at_ms, last_seq, standing, assembly, pack_serial FROM job",
               "SELECT number, step, m.assembly, channel, base, verdict FROM measurement m JOIN job ON job.id = m.job ORDER BY 1, seq, item",
               "SELECT number, step, f.assembly, spot, float_um FROM float_run f JOIN job ON job.id = f.job ORDER BY 1, seq",
               "SELECT number, shim, fit FROM shim_trial t JOIN job ON job.id = t.job ORDER BY 1, seq",
               "SELECT number, shim, c.assembly, reason FROM shim_chosen c JOIN job ON job.id = c.job ORDER BY 1, seq")


def answers(store, *questions):
    with contextlib.closing(sqlite3.connect(f"file:{store}?mode=ro", uri=True)) as database:
        told = [database.execute(question).fetchall() for question in questions]
    return told[0] if len(told) == 1 else told


def made(folder, jobs, *options):
    store = pathlib.Path(folder) / "workshop.shimwright"
    status, _, err = run("make-demo", "--jobs", jobs, "--store", store, *options)
    assert status == 0, err
    return store


class Jobs(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.store = made(folder.name, JOBS)
        cls.jobs = [dict(zip("id number vehicle gearbox serial opened last standing pack".split(), row))
                    for row in answers(cls.store, OPENED + " ORDER BY opened_at_ms")]
        cls.closed = [job for job in cls.jobs if job["standing"] == "closed"]

    def by_job(self, question):
        found = collections.defaultdict(list)
        for job, *rest in answers(self.store, question):
            found[job].append(tuple(rest))
        return found

    def visits(self):
        """Each two jobs of a vehicle that follow each other."""
        lives = collections.defaultdict(list)
        for job in self.jobs:
            lives[job["vehicle"]].append(job)
        return [pair for life in lives.values() for pair in zip(life, life[1:])]

    def fitted(self):
        return {(job, side): thickness for job, side, thickness in
                answers(self.store, "SELECT job, side, thickness_um FROM shim_chosen ORDER BY job, seq")}

    def floats(self, as_found):
        """Mean float of each side's last series of each assembly."""
        runs = collections.defaultdict(list)
        for job, assembly, side, series, micrometres in answers(
                self.store, f"SELECT job, assembly, side, series, float_um FROM float_run WHERE as_found = {as_found} ORDER BY job, seq"):
            runs[job, side, assembly, series].append(micrometres)
        last = {}
        for job, side, assembly, series in sorted(runs):
            last[job, side, assembly] = statistics.mean(runs[job, side, assembly, series])
        return last

    def test_the_store_is_in_order(self):
        self.assertEqual(run("check", "--store", self.store)[0], 0)
        self.assertEqual(len(self.jobs), JOBS)

    def test_every_job_differs(self):
        odometers = self.by_job("SELECT job, base FROM measurement WHERE step = 'odometer'")
        self.assertEqual(len({tuple(each) for each in odometers.values()}), len(odometers))
        self.assertEqual(len({job["opened"] for job in self.jobs}), JOBS)
        stories = self.by_job("SELECT job, float_um FROM float_run ORDER BY job, seq")
        self.assertEqual(len({tuple(stories[job["id"]]) for job in self.closed}), len(self.closed))
        shims = self.by_job("SELECT job, base FROM measurement WHERE step LIKE '%-shim-measured' ORDER BY job, seq")
        self.assertGreater(len({tuple(shims[job["id"]]) for job in self.closed}), 0.85 * len(self.closed))
        trials = self.by_job("SELECT job, side, shim, fit FROM shim_trial ORDER BY job, seq")
        self.assertGreater(len({tuple(each) for each in trials.values()}), len(trials) / 4)
        self.assertGreater(len({tuple(each) for each in self.by_job("SELECT job, side, shim FROM shim_chosen").values()}), JOBS / 3)

    def test_one_in_twenty_is_open_and_only_late_ones(self):
        open_jobs = [job for job in self.jobs if job["standing"] != "closed"]
        self.assertTrue(0.025 * JOBS <= len(open_jobs) <= 0.075 * JOBS, len(open_jobs))
        late = sorted(job["opened"] for job in self.jobs)[int(0.85 * JOBS)]
        self.assertGreater(min(job["opened"] for job in open_jobs), late)
        self.assertFalse([later for earlier, later in self.visits() if earlier["standing"] != "closed"])

    def test_one_in_eight_needs_a_second_assembly(self):
        again = {job for job, in answers(self.store, "SELECT id FROM job WHERE assembly > 1 AND standing = 'closed'")}
        self.assertTrue(0.07 <= len(again) / len(self.closed) <= 0.18, len(again))

    def test_floats_follow_the_shims(self):
        """Of sides whose shim was changed: what the float lost for each micrometre the shim gained."""
        shims = {(job, side, assembly): thickness for job, side, assembly, thickness in
                 answers(self.store, "SELECT job, side, assembly, thickness_um FROM shim_chosen ORDER BY job, seq")}
        floats = self.floats(0)
        slopes = [(floats[job, side, 2] - floats[job, side, 1]) / (shims[job, side, 2] - shims[job, side, 1])
                  for job, side, assembly in floats if assembly == 2 and (job, side, 1) in floats
                  and abs(shims.get((job, side, 2), 0) - shims.get((job, side, 1), 0)) > 100 and (job, side, 2) in shims]
        self.assertGreater(len(slopes), 5)
        for slope in slopes:
            self.assertTrue(-1.35 < slope < -0.65, slope)
        self.assertGreater(len({round(slope, 4) for slope in slopes}), 3)

    def test_vehicles_come_back_as_they_left(self):
        visits = self.visits()
        self.assertTrue(JOBS / 20 < len(visits) < JOBS / 4, len(visits))
        odometer = {job: base for job, base in answers(self.store, "SELECT job, base FROM measurement WHERE step = 'odometer'")}
        old_shim = {(job, "lower" if "lower" in step else "upper"): base for job, step, base in
                    answers(self.store, "SELECT job, step, base FROM measurement WHERE step LIKE 'old-shim-%'")}
        left, found, fitted = self.floats(0), self.floats(1), self.fitted()
        compared = 0
        for earlier, later in visits:
            with self.subTest(earlier["vehicle"], jobs=(earlier["number"], later["number"])):
                self.assertEqual((earlier["gearbox"], earlier["serial"]), (later["gearbox"], later["serial"]))
                self.assertGreater(later["opened"] - earlier["last"], HALF_A_YEAR_MS)
                if later["id"] in odometer:
                    self.assertGreater(odometer[later["id"]], odometer[earlier["id"]])
                for side in ("lower", "upper"):
                    if (later["id"], side) in old_shim:
                        self.assertLessEqual(abs(old_shim[later["id"], side] - fitted[earlier["id"], side]), 5)
                    if (later["id"], side, 1) in found:
                        last = max(assembly for job, each, assembly in left if (job, each) == (earlier["id"], side))
                        worn = found[later["id"], side, 1] - left[earlier["id"], side, last]
                        self.assertTrue(15 < worn < 450, worn)
                        compared += 1
        self.assertGreater(compared, JOBS / 20)
        packs = dict(answers(self.store, "SELECT number, pack_serial FROM job"))
        self.assertEqual(len(set(packs.values()) - {None}), len([each for each in packs.values() if each]))
        questions = answers(self.store, "SELECT body FROM entry WHERE kind = 'confirmed'")
        for body, in questions:
            self.assertNotIn(json.loads(body)["question"], ("other_pack", "less_than_left"))

    def test_a_teach_in_is_left_only_after_a_second_try(self):
        tries = self.by_job("SELECT job, json_extract(body, '$.step') FROM entry WHERE kind = 'teach_in_tried'")
        self.assertTrue(tries, "no try was found")
        left = answers(self.store, "SELECT job, step FROM deviation WHERE step LIKE 'teach-in%'")
        for job, step in left:
            self.assertEqual(tries[job].count((step,)), 2)
        self.assertLess(len(left), 0.03 * JOBS)

    def test_most_jobs_have_no_deviation(self):
        deviated = {job for job, in answers(self.store, "SELECT job FROM deviation")}
        self.assertLess(len(deviated), JOBS / 4)
        photos = answers(self.store, "SELECT count(*), count(DISTINCT sha256) FROM photo")[0]
        self.assertGreater(photos[0], 3 * JOBS)
        self.assertEqual(photos[1], 5)
        self.assertEqual(len([each for each in (self.store.parent / "photos").rglob("*") if each.is_file()]), 5)

    def test_oil_comes_out_by_the_litre(self):
        for base, unit in answers(self.store, "SELECT base, unit FROM measurement WHERE step = 'oil-drained'"):
            self.assertEqual(unit, "l")
            self.assertTrue(1_000_000 < base < 2_500_000, base)

    def test_people_work_by_day_and_on_working_days(self):
        told = answers(self.store, "SELECT strftime('%w', at_ms / 1000 + offset_min * 60, 'unixepoch'), "
                                   "strftime('%H', at_ms / 1000 + offset_min * 60, 'unixepoch') FROM entry")
        self.assertLessEqual({day for day, _ in told}, set("12345"))
        self.assertLessEqual({int(hour) for _, hour in told}, set(range(8, 17)))
        begins = answers(self.store, "SELECT strftime('%H', at_ms / 1000 + offset_min * 60, 'unixepoch') FROM entry WHERE seq = 1")
        self.assertLessEqual({int(hour) for hour, in begins}, {8, 9, 10, 11})

    def test_the_second_assembly_says_why(self):
        """“Seated again” only where it was."""
        seated = set()
        reasons = 0
        for job, kind, body in answers(self.store, "SELECT job, kind, body FROM entry WHERE kind IN ('series_begun', 'assembly_begun') "
                                                   "ORDER BY job, seq"):
            told = json.loads(body)
            if kind == "series_begun" and told["reason"] == "seated_again":
                seated.add(job)
            elif kind == "assembly_begun":
                self.assertEqual("seating again" in told["reason"], job in seated, told["reason"])
                seated.discard(job)
                reasons += 1
        self.assertGreater(reasons, 5)


class Seeds(unittest.TestCase):
    def test_the_same_seed_gives_the_same_jobs_and_another_others(self):
        told = []
        for options in ((), ("--seed", 1), ("--seed", 2)):
            with tempfile.TemporaryDirectory() as folder:
                told.append(answers(made(folder, 30, *options), *ALL_BUT_IDS))
        self.assertEqual(told[0], told[1])
        for same, other in zip(told[0], told[2]):
            self.assertNotEqual(same, other)


program.main()
