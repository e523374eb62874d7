"""Stores of many jobs, what takes how long on them, and how it grows: writes docs/performance.md and docs/performance.svg.

    python3 tests/bench/load.py [--build build/release] [--jobs 1000,5000,20000] [--make-in FOLDER]

The stores lie in build/release/load while it runs and are deleted after each. Twenty thousand jobs need seven gigabytes there. Each job
is brought to the disk by itself; FOLDER, in memory, makes filling a store quicker and measures nothing else."""

import argparse
import json
import math
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

# key: what, unit, whether a person waits for it
ROWS = {
    "open_ms": ("open the store", "ms", True),
    "window_ms": ("window with the first jobs on it", "ms", True),
    "home_page_ms": ("go home", "ms", True),
    "open_jobs_ms": ("list the open jobs", "ms", True),
    "search_end_ms": ("search: end of a VIN", "ms", True),
    "search_wrong_ms": ("search: a VIN with one wrong character", "ms", True),
    "search_two_ms": ("search: two characters", "ms", True),
    "past_jobs_page_ms": ("page of past jobs with a search", "ms", True),
    "jobs_of_vehicle_ms": ("jobs of a vehicle", "ms", True),
    "record_ms": ("record of a job", "ms", True),
    "record_page_ms": ("page of a record", "ms", True),
    "workshop_page_ms": ("workshop page", "ms", True),
    "context_ms": ("what an entry is judged by, read", "ms", True),
    "entry_ms": ("one entry, on the disk", "ms", True),
    "memory_mib": ("memory of the window, at most", "MiB", False),
    "backup_ms": ("backup, checked", "s", False),
    "check_ms": ("check of the store", "s", False),
    "size_mib": ("size of the store", "MiB", False),
}


def said_by(words):
    done = subprocess.run(list(map(str, words)), capture_output=True, text=True, check=False, env=dict(os.environ, QT_QPA_PLATFORM="offscreen"))
    if done.returncode != 0:
        sys.exit(f"{' '.join(map(str, words))}\n{done.stderr}")
    return done.stdout.splitlines()


def make(build, jobs, folder, store):
    with tempfile.TemporaryDirectory(dir=folder) as place:
        said_by([build / "bin/shimwright-cli", "make-demo", "--jobs", jobs, "--store", f"{place}/workshop.shimwright"])
        shutil.move(f"{place}/workshop.shimwright", store)
        shutil.copytree(f"{place}/photos", store.parent / "photos", dirs_exist_ok=True)


def measure(build, jobs, folder, make_in):
    store = folder / "workshop.shimwright"
    make(build, jobs, make_in or folder, store)
    figures = {}
    for part in ("store", "window", "whole"):
        figures.update(json.loads(said_by([build / "bin/load_bench", store, part])[-1]))
    return figures


def growth(sizes, values):
    """The power of the number of jobs by which it grows, from the smallest to the largest store: 0 flat, 1 in proportion."""
    if len(sizes) < 2 or min(values) <= 0:
        return None
    return math.log(values[-1] / values[0]) / math.log(sizes[-1] / sizes[0])


def shown(value, unit):
    value = value / 1000 if unit == "s" else value
    return f"{value:.1f}" if value < 100 else f"{value:.0f}"


def table(sizes, figures):
    lines = ["| what | unit | " + " | ".join(f"{size:,} jobs" for size in sizes) + " | grows as jobs to the |", "|---|---|" + "--:|" * (len(sizes) + 1)]
    for key, (what, unit, _) in ROWS.items():
        values = [figures[size][key] for size in sizes if key in figures[size]]
        if len(values) == len(sizes):
            power = growth(sizes, values)
            lines.append(f"| {what} | {unit} | " + " | ".join(shown(value, unit) for value in values) + f" | {'' if power is None else f'{power:.2f}'} |")
    return lines


def duration(milliseconds):
    return f"{milliseconds:g} ms" if milliseconds < 1000 else f"{milliseconds / 1000:g} s"


def plot(sizes, figures):
    """Both axes logarithmic: flat is level, in proportion is steep."""
    keys = [key for key in ROWS if all(key in figures[size] for size in sizes) and key not in ("size_mib", "memory_mib")]
    width, height, left, right, top, bottom = 900, 560, 70, 300, 20, 50
    least, most = 0.01, max(10.0, max(figures[size][key] for size in sizes for key in keys))
    span_x = math.log10(sizes[-1] / sizes[0]) or 1
    span_y = math.ceil(math.log10(most)) - math.log10(least)

    def place(size, value):
        x = left + (width - left - right) * math.log10(size / sizes[0]) / span_x
        y = height - bottom - (height - top - bottom) * (math.log10(max(value, least)) - math.log10(least)) / span_y
        return x, y

    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" font-family="Open Sans, sans-serif" font-size="12">',
        "<title>Times by number of jobs</title>",
        f'<rect width="{width}" height="{height}" fill="#F4F2ED"/>',
    ]
    for power in range(math.ceil(math.log10(least)), math.ceil(math.log10(most)) + 1):
        _, y = place(sizes[0], 10**power)
        lines.append(f'<line x1="{left}" x2="{width - right}" y1="{y:.1f}" y2="{y:.1f}" stroke="#C9CCCF"/>')
        lines.append(f'<text x="{left - 8}" y="{y + 4:.1f}" text-anchor="end" fill="#4A5056">{duration(10.0**power)}</text>')
    for size in sizes:
        x, _ = place(size, least)
        lines.append(f'<text x="{x:.1f}" y="{height - bottom + 20}" text-anchor="middle" fill="#4A5056">{size:,} jobs</text>')
    ends = sorted((place(sizes[-1], figures[sizes[-1]][key])[1], key) for key in keys)
    label_y = top - 4
    for y, key in ends:
        colour = "#15607C" if ROWS[key][2] else "#A33C20"
        points = " ".join("{:.1f},{:.1f}".format(*place(size, figures[size][key])) for size in sizes)
        label_y = max(label_y + 15, y)
        lines.append(f'<polyline points="{points}" fill="none" stroke="{colour}" stroke-width="2"/>')
        lines.append(f'<line x1="{width - right}" y1="{y:.1f}" x2="{width - right + 16}" y2="{label_y:.1f}" stroke="{colour}" stroke-width="0.5"/>')
        lines.append(f'<text x="{width - right + 20}" y="{label_y + 4:.1f}" fill="{colour}">{ROWS[key][0]}</text>')
    return "\n".join(lines + ["</svg>"]) + "\n"


def document(sizes, figures, note):
    largest = figures[sizes[-1]]
    return "\n".join(
        [
            "# Performance",
            "",
            "What takes how long in a store of many jobs, and how it grows. Written by `python3 tests/bench/load.py`, which fills stores with",
            "`make-demo`, measures with `load_bench`, and deletes them again. Median of fifteen; of what takes long a single run. Blue in the plot:",
            "a person waits for it; brick: it goes on in the background or is asked for.",
            "",
            f"The largest store holds {largest['jobs']:,} jobs and {largest['entries']:,} entries.",
            *(["", note] if note else []),
            "",
            *table(sizes, figures),
            "",
            "0 in the last column is flat, 1 is in proportion to the number of jobs.",
            "",
            "![Times by number of jobs](performance.svg)",
            "",
        ]
    )


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--build", type=Path, default=ROOT / "build/release")
    parser.add_argument("--jobs", default="1000,5000,20000")
    parser.add_argument("--make-in", type=Path)
    parser.add_argument("--note", default="", help="a paragraph about this run")
    parser.add_argument("--out", type=Path, default=ROOT / "docs")
    words = parser.parse_args()
    sizes = sorted(int(each) for each in words.jobs.split(","))
    figures = {}
    for size in sizes:
        folder = words.build.resolve() / "load" / str(size)
        shutil.rmtree(folder, ignore_errors=True)
        folder.mkdir(parents=True)
        try:
            figures[size] = measure(words.build.resolve(), size, folder, words.make_in)
        finally:
            shutil.rmtree(folder)
        print(size, json.dumps(figures[size]), flush=True)
    (words.out / "performance.svg").write_text(plot(sizes, figures), encoding="utf-8")
    (words.out / "performance.md").write_text(document(sizes, figures, words.note), encoding="utf-8")


if __name__ == "__main__":
    main()
