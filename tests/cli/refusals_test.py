"""What the command line alone refuses: each cause provoked, by its code in docs/refusals.md, told with its sentence."""
import json
import re

from program import DEMO, SOURCE, Bench, main, run


def sentence_of(code):
    """The sentence's beginning, up to what is filled in."""
    part = (SOURCE / "docs" / "refusals.md").read_text(encoding="utf-8").split("\n## `cli`\n")[1]
    row = re.search(rf"^\| `{code}` \| (.+?) \|", part, re.MULTILINE)
    return row[1].split(" / ")[0].split("{")[0].rstrip("“")


class Refusals(Bench):
    def said(self, code, *words, status=2):
        done, out, err = run(*words)
        self.assertEqual((done, out), (status, []), err)
        self.assertEqual(len(err), 1, err)
        self.assertIn(sentence_of(code), err[0])

    def test_a_demonstration_is_made_in_a_new_store_alone(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        self.said("not_empty", "make-demo", "--jobs", 1, "--store", self.store)

    def test_two_jobs_of_one_number_are_told_apart_by_their_ids(self):
        for _ in range(2):  # the second goes another way than the script: the vehicle was here before
            run("replay", DEMO[0], "--store", self.store)
        number = next(
            each["number"] for each in json.loads(DEMO[0].read_text(encoding="utf-8"))["commands"] if "number" in each
        )
        self.said("several_jobs", "record", number, "--store", self.store, "--summary")

    def test_a_record_is_wanted_as_something(self):
        self.said("nothing_wanted", "record", "1001", "--store", self.store)

    def test_a_store_in_order_takes_no_backup(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        self.assertEqual(run("backup", self.folder / "backups" / "monday.shimwright", "--store", self.store)[0], 0)
        self.said("store_in_order", "rescue", "--store", self.store, "--put-back")

    def test_a_period_is_two_days_the_first_before_the_last(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        words = ("measurements", "--store", self.store, "--csv", self.folder / "all.csv", "--from")
        self.said("bad_day", *words, "24.11.2026", "--to", "2026-11-30")
        self.said("bad_period", *words, "2026-11-30", "--to", "2026-11-24")

    def test_where_no_backup_is_whole_it_says_so(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        self.store.write_bytes(self.store.read_bytes()[:-4096])
        self.said("no_backup", "rescue", "--store", self.store, "--put-back", status=1)


main()
