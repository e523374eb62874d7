"""Every demo job is gone through to its record."""
import json
import subprocess

import program
from program import DEMO, Bench, run


class DemoJobs(Bench):
    def test_there_are_five_at_least(self):
        self.assertGreaterEqual(len(DEMO), 5)

    def test_each_becomes_a_record(self):
        for path in DEMO:
            with self.subTest(path.name):
                store, pdf = self.folder / f"{path.stem}.shimwright", self.folder / f"{path.stem}.pdf"
                status, out, err = run("replay", path, "--store", store, "--record", pdf)
                self.assertEqual((status, err), (0, []))
                lines = [json.loads(line) for line in out]
                self.assertEqual(len(lines), len(program.script(path)["commands"]) + 1)
                self.assertEqual(lines[-1]["unexpected"], 0)
                self.assertEqual(run("check", "--store", store)[0], 0)
                text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True).stdout
                self.assertIn("DEMONSTRATION VALUES", text)
                job = lines[-1]["job"]
                for paper in ("a4", "letter"):
                    self.assertEqual(run("record", job, "--store", store, "--paper", paper, "--pdf", pdf)[0], 0)
                    told = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
                    pages = int(next(line.split()[1] for line in told.splitlines() if line.startswith("Pages:")))
                    self.assertTrue(1 <= pages <= 3, f"{pages} pages of {paper}, addenda counted")
                fonts = subprocess.run(["pdffonts", pdf], capture_output=True, text=True, check=True).stdout
                for line in fonts.splitlines()[2:]:
                    self.assertRegex(line, r"\byes\b", "a font is not embedded")

    def test_twice_gives_equal_hashes_but_for_ids_and_times(self):
        for path in DEMO:
            with self.subTest(path.name):
                hashes, jobs = set(), set()
                for turn in (1, 2):
                    _, out, _ = run("replay", path, "--store", self.folder / f"{path.stem}-{turn}.shimwright")
                    last = json.loads(out[-1])
                    hashes.add(last["fold_hash"])
                    jobs.add(last["job"])
                self.assertEqual((len(hashes), len(jobs)), (1, 2))

    def test_another_reading_gives_another_hash(self):
        script = program.script()
        changed = next(each for each in script["commands"] if each["command"] == "float")
        changed["lifted"] = "0.71" if changed["lifted"] != "0.71" else "0.72"
        hashes = set()
        for turn, each in enumerate((program.script(), script)):
            _, out, _ = run("replay", "-", "--store", self.folder / f"{turn}.shimwright", text=json.dumps(each),
                            folder=DEMO[0].parent)
            hashes.add(json.loads(out[-1])["fold_hash"])
        self.assertEqual(len(hashes), 2)

    def test_the_second_tells_its_story(self):
        """Trials and float disagree, seating again does not help, another shim at the second assembly."""
        _, out, _ = run("replay", DEMO[1], "--store", self.store)
        lines = [json.loads(line) for line in out]
        said = [each["advice"]["conclusion"] for each in lines if "advice" in each]
        self.assertIn("seat_again", said)
        self.assertLess(said.index("seat_again"), said.index("change_shim"))
        final = [each for each in lines if each.get("job_state") == "closed"][-1]
        self.assertEqual((final["assembly"], final["shims"]), (2, {"lower": "1.95", "upper": "1.75"}))
        status, sentences, _ = run("record", lines[-1]["job"], "--store", self.store, "--summary")
        self.assertEqual(status, 0)
        self.assertIn("1.95", sentences[0])

    def test_the_second_ends_sealed_and_only_its_first_print_is_none_again(self):
        first, again = self.folder / "first.pdf", self.folder / "again.pdf"
        _, out, _ = run("replay", DEMO[1], "--store", self.store, "--record", first)
        job = json.loads(out[-1])["job"]
        self.assertEqual(json.loads(out[-2])["job_state"], "sealed")
        self.assertEqual(run("verify", "--store", self.store, "--job", job), (0, ["whole and ours"], []))
        self.assertEqual(run("record", job, "--store", self.store, "--pdf", again)[0], 0)
        texts = [subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, text=True, check=True).stdout
                 for path in (first, again)]
        for text in texts:
            self.assertIn("Sealed 24 Nov 2026 16:25 +00:00 as ", text)
            self.assertNotIn("draft", text)
        self.assertEqual([text.count("· reprint ·") for text in texts], [0, texts[1].count("\f")])

    def test_the_fifth_is_added_to_after_it_was_sealed(self):
        pdf = self.folder / "record.pdf"
        _, out, _ = run("replay", DEMO[4], "--store", self.store, "--record", pdf)
        self.assertEqual(run("verify", "--store", self.store, "--job", json.loads(out[-1])["job"])[0], 0)
        text = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True, check=True).stdout
        added = text.split("Addenda, after the sealed record")[1]
        self.assertIn("1. Rolf Tarn, RT, 1 Dec 2026 08:10 +00:00.", added)
        self.assertIn("customer told to go easy for 500 km", added)


program.main()
