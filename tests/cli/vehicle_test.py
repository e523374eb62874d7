"""What the store knows of one vehicle and of a period, from a terminal."""
import csv
import json
import sqlite3

from program import DEMO, Bench, main, run

try:
    import jsonschema
except ImportError:
    raise SystemExit("The Python package jsonschema is missing; install python3-jsonschema.")

from program import SOURCE

SCHEMA = jsonschema.Draft202012Validator(
    json.loads((SOURCE / "data/schema/measurements.schema.json").read_text(encoding="utf-8"))
)
ALWAYS = ("--from", "1999-01-01", "--to", "2099-12-31")


class Vehicle(Bench):
    def setUp(self):
        super().setUp()
        for script in DEMO[:2]:
            self.assertEqual(run("replay", script, "--store", self.store)[0], 0)
        with sqlite3.connect(self.store) as store:
            self.vehicles = [row[0] for row in store.execute("SELECT vehicle FROM job ORDER BY opened_at_ms")]

    def rows_of(self, file):
        with open(file, newline="", encoding="utf-8") as opened:
            return list(csv.DictReader(opened, strict=True))

    def test_a_vehicle_tells_its_jobs(self):
        status, out, err = run("vehicle", self.vehicles[0], "--store", self.store)
        self.assertEqual((status, err), (0, []))
        job = json.loads(out[0])
        self.assertEqual(job["state"], "closed")
        self.assertEqual(set(job["shims"]), {"lower", "upper"})
        finals = [each for each in job["floats"] if not each["as_found"]]
        self.assertEqual(len(finals), 2)
        for each in finals:
            self.assertLess(each["least_um"], each["mean_um"])
            self.assertLess(each["mean_um"], each["most_um"])

    def test_an_unknown_vehicle_is_refused(self):
        self.assertIn("no job of this vehicle", self.refused("vehicle", "TESTVN000", "--store", self.store))

    def test_every_number_in_the_store_is_in_the_csv(self):
        out = self.folder / "all.csv"
        status, said, err = run("measurements", *ALWAYS, "--store", self.store, "--csv", out)
        self.assertEqual((status, err), (0, []))
        self.assertEqual(json.loads(said[0])["jobs"], 2)
        rows = self.rows_of(out)
        with sqlite3.connect(self.store) as store:
            counted = "NOT EXISTS (SELECT 1 FROM withdrawal WHERE withdrawal.job = {0}.job AND withdrawal.entry = {0}.seq)"
            kept = store.execute(
                "SELECT job, seq, base FROM measurement WHERE unit = 'mm' AND " + counted.format("measurement")
            ).fetchall()
            floats = store.execute("SELECT job, seq, float_um FROM float_run WHERE " + counted.format("float_run")).fetchall()
        there = {(row["job"], int(row["entry"]), round(float(row["length [mm]"]) * 1000)) for row in rows if row["length [mm]"]}
        self.assertTrue(kept and floats)
        for each in kept + floats:
            self.assertIn(each, there)

    def test_the_json_is_as_its_schema_says_and_holds_the_same_numbers(self):
        table, tree = self.folder / "all.csv", self.folder / "all.json"
        self.assertEqual(run("measurements", *ALWAYS, "--store", self.store, "--csv", table, "--json", tree)[0], 0)
        text = tree.read_text(encoding="utf-8")
        parsed = json.loads(text)
        SCHEMA.validate(parsed)
        self.assertEqual(text, json.dumps(parsed, sort_keys=True, separators=(",", ":"), ensure_ascii=False))
        lines = sum(len(job["measurements"]) for job in parsed["jobs"])
        self.assertEqual(lines, len(self.rows_of(table)))

    def test_one_vehicle_alone(self):
        out = self.folder / "one.csv"
        self.assertEqual(run("vehicle", self.vehicles[0], "--store", self.store, "--csv", out)[0], 0)
        self.assertEqual({row["vehicle"] for row in self.rows_of(out)}, {self.vehicles[0]})

    def test_what_was_erased_is_said_to_be(self):
        out = self.folder / "all.csv"
        run("measurements", *ALWAYS, "--store", self.store, "--csv", out)
        plates = {row["plate"] for row in self.rows_of(out)}
        self.assertEqual(run("erase", self.vehicles[0], "--store", self.store)[0], 0)
        run("measurements", *ALWAYS, "--store", self.store, "--csv", out)
        for row in self.rows_of(out):
            if row["vehicle"] == self.vehicles[0]:
                self.assertIn(row["plate"], ("", "erased"))
            else:
                self.assertIn(row["plate"], plates)

    def test_days_that_are_none_are_refused_and_nothing_is_written(self):
        out = self.folder / "all.csv"
        for days in (("2026-13-01", "2026-12-31"), ("26-1-1", "2026-12-31"), ("2026-12-31", "2026-12-01")):
            self.refused("measurements", "--from", days[0], "--to", days[1], "--store", self.store, "--csv", out)
        self.refused("measurements", *ALWAYS, "--store", self.store)
        self.assertFalse(out.exists())

    def test_another_file_is_not_written_over(self):
        before = self.store.read_bytes()
        self.assertIn("not written over", self.refused("measurements", *ALWAYS, "--store", self.store, "--csv", self.store))
        self.assertEqual(self.store.read_bytes(), before)

    def test_the_figures_of_a_period(self):
        status, out, err = run("figures", *ALWAYS, "--store", self.store)
        self.assertEqual((status, err), (0, []))
        whole = json.loads(out[-1])
        self.assertEqual((whole["jobs"], whole["with_shim"]), (2, 2))
        self.assertEqual(sum(json.loads(line)["jobs"] for line in out if '"month"' in line), 2)
        with sqlite3.connect(self.store) as store:
            again = store.execute("SELECT count(*) FROM job WHERE assembly > 1").fetchone()[0]
        self.assertEqual(whole["second_assembly"], again)
        self.refused("figures", *ALWAYS, "--store", self.store, "--within-km", "-1")


if __name__ == "__main__":
    main()
