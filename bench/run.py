"""Run every benchmark of this folder, one after the other."""

import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).parent


def main() -> None:
    for script in sorted(HERE.glob("*.py")):
        if script.name != "run.py":
            print(f"\n== {script.name}", flush=True)
            subprocess.run([sys.executable, str(script)], check=True)


if __name__ == "__main__":
    main()
