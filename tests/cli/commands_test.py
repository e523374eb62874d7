"""Each command: its help, its answers, its exit status."""
import json

import program
from program import Bench, main, run

COMMANDS = ("advise", "reading", "vin", "replay", "find", "record", "check", "backup", "rescue", "erase",
            "make-demo")


class Commands(Bench):
    def made(self, jobs=4):
        self.assertEqual(run("make-demo", "--jobs", jobs, "--store", self.store)[0], 0)

    def test_help(self):
        status, out, _ = run("--help")
        self.assertEqual(status, 0)
        for each in COMMANDS:
            self.assertTrue(any(each in line for line in out))
            status, lines, _ = run(each, "--help")
            self.assertEqual(status, 0)
            self.assertTrue(lines[0].startswith("shimwright-cli " + each))

    def test_words_it_does_not_know(self):
        for words in ([], ["fly"], ["find"], ["find", "x", "--store"], ["check", "--store", "a", "--store", "b"],
                      ["check", "--loud", "--store", "a"], ["record", "1", "--store", "a", "--paper", "a3"]):
            with self.subTest(words):
                self.assertEqual(run(*words)[0], 2)

    def test_a_number_may_stand_behind_two_hyphens(self):
        self.assertEqual(run("reading", "--", "-0,5"), run("reading", "-0,5"))

    def test_reading(self):
        self.assertEqual(run("reading", "0,93"), (0, ['{"um":930,"decimals":2,"unit":"mm"}'], []))
        self.assertEqual(run("reading", "-0,02")[1], ['{"um":-20,"decimals":2,"unit":"mm"}'])
        self.assertEqual(run("reading", "0.017", "in")[1], ['{"um":432,"decimals":3,"unit":"in"}'])
        self.assertEqual(run("reading", "1.000,5"), (2, [], ["two_marks"]))

    def test_vin(self):
        status, out, _ = run("vin", "TEST-VN00 20A000123")
        self.assertEqual((status, json.loads(out[0])["key"]), (0, "TESTVN0020A000123"))
        status, out, _ = run("vin", "TESTVNOO20A000123")
        self.assertEqual((status, json.loads(out[0])["suggestion"]), (2, "TESTVN0020A000123"))

    def test_advise_answers_every_vector(self):
        for path in sorted((program.SOURCE / "tests" / "shim" / "vectors").glob("*.json")):
            with self.subTest(path.name):
                vector = json.loads(path.read_text(encoding="utf-8"))
                status, out, err = run("advise", text=json.dumps(vector["case"]))
                if "refused" in vector["answer"]:
                    self.assertEqual((status, out), (2, []))
                    self.assertTrue(err[0].startswith(vector["answer"]["refused"] + ":"), err)
                else:
                    self.assertEqual((status, set(json.loads(out[0]))), (0, set(vector["answer"])))

    def test_find_check_and_backup(self):
        self.made()
        status, out, _ = run("find", "1001", "--store", self.store)
        self.assertEqual((status, json.loads(out[0])["number"]), (0, "1001"))
        self.assertEqual(run("find", "zzzzzz", "--store", self.store), (0, [], []))
        copy = self.folder / "copy.shimwright"
        status, _, err = run("backup", copy, "--store", self.store)
        self.assertEqual((status, [line for line in err if not line.startswith("backup: ")]), (0, []))
        answers = [json.loads(run("check", "--store", each)[1][0]) for each in (self.store, copy)]
        self.assertEqual(answers[0], answers[1])
        self.assertTrue(answers[0]["in_order"])

    def test_a_changed_byte_is_found(self):
        self.made(1)
        data = bytearray(self.store.read_bytes())
        at = data.rfind(b'"within"')
        data[at + 1] ^= 1
        self.store.write_bytes(data)
        status, _, err = run("check", "--store", self.store)
        self.assertEqual(status, 1)
        self.assertTrue(err)

    def test_erase(self):
        self.made(2)
        vehicle = json.loads(run("find", "1001", "--store", self.store)[1][0])["vehicle"]
        status, out, _ = run("erase", vehicle.lower(), "--store", self.store)
        self.assertEqual((status, json.loads(out[0])["vehicle"]), (0, vehicle))
        erased = json.loads(out[0])["erased"]
        self.assertGreater(erased, 0)
        answer = json.loads(run("check", "--store", self.store)[1][0])
        self.assertEqual((answer["in_order"], answer["erased_texts"]), (True, erased))
        self.assertEqual(run("record", "1001", "--store", self.store, "--summary")[0], 0)
        self.assertIn("TESTVN00NOBODY000", self.refused("erase", "TESTVN00NOBODY000", "--store", self.store))
        self.assertFalse((self.folder / "none").exists())
        self.refused("erase", vehicle, "--store", self.folder / "none")
        self.assertFalse((self.folder / "none").exists())

    def test_record(self):
        self.made(1)
        json_file, pdf = self.folder / "r.json", self.folder / "r.pdf"
        status, out, err = run("record", "1001", "--store", self.store, "--json", json_file, "--pdf", pdf, "--summary",
                               "--paper", "letter")
        self.assertEqual((status, err), (0, []))
        self.assertTrue(out)
        text = json_file.read_text(encoding="utf-8")
        value = json.loads(text)
        again = json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        self.assertEqual((value["format"], text.strip()), ("shimwright.record", again))
        self.assertEqual(pdf.read_bytes()[:5], b"%PDF-")
        self.assertIn("1002", self.refused("record", "1002", "--store", self.store, "--summary"))
        status, _, err = run("record", "1001", "--store", self.store, "--pdf", self.folder / "no" / "where.pdf")
        self.assertEqual((status, len(err)), (1, 1))

    def test_version(self):
        self.assertRegex(run("--version")[1][0], r"^shimwright-cli \d+\.\d+\.\d+$")
        self.assertEqual(run("-h")[1], run("--help")[1])
        self.assertEqual(run("record", "-h")[1], run("record", "--help")[1])

    def test_make_demo_is_seeded_and_varied(self):
        self.made(40)
        other = self.folder / "other.shimwright"
        self.assertEqual(run("make-demo", "--jobs", 40, "--store", other)[0], 0)
        counts = []
        for store in (self.store, other):
            answer = json.loads(run("check", "--store", store)[1][0])
            self.assertTrue(answer["in_order"])
            counts.append(answer["entries"])
        self.assertEqual(counts[0], counts[1])


main()
