# Everything a fresh clone needs, with its own virtual environment in .venv.
#   make demo    set up, and open the main job on the invented event
#   make test    set up, and run every test, those in a browser after the others (BROWSERS=1 for one at a time)
#   make check   format, lint, layers, types
#   make fuzz    send the JSON of the desk many more requests nobody thought of
#   make coverage  which lines and branches of rules/, course/ and relief/ the tests reach, by file and by room
#   make pin     write the leaf counts of the Rules as they now are, and which answers no provision names
#   make docs    write the generated pages of docs/
#   make changes write what changed between the editions, as the package keeps it
#   make fit     learn the finding of incidents anew from training/sentences
#   make bench   run the benchmarks beside their peers

PYTHON ?= python3
BIN := .venv/bin
READY := .venv/.ready
PORT ?= 8123
BROWSERS ?= 2

.PHONY: demo test fuzz coverage check pin docs changes fit bench chromium postgresql libnss3-tools clean

$(READY): pyproject.toml constraints.txt
	$(PYTHON) scripts/check_python.py
	$(PYTHON) -m venv .venv
	$(BIN)/python -m pip install --quiet --disable-pip-version-check -c constraints.txt -e '.[dev,training]'
	touch $(READY)

demo: $(READY)
	mkdir -p build
	$(BIN)/marram serve --demo --records build/demo.db --open --port $(PORT)

# Browser tests come after the others, which would starve a browser, and with few workers. Both runs report, whatever
# the first one said. A browser test that fails is tried once more, three of a run at most, and the summary names it with what failed.
test: $(READY) chromium postgresql libnss3-tools
	@failed=0; set -x; \
	$(BIN)/python -m pytest -q -n auto --dist worksteal -m "not browser" -p no:rerunfailures || failed=1; \
	$(BIN)/python -m pytest -q -n $(BROWSERS) --dist worksteal -m browser -r aR \
		--reruns 1 --max-suite-reruns 3 --rerun-show-tracebacks || failed=1; \
	{ set +x; } 2> /dev/null; exit $$failed

fuzz: $(READY)
	MARRAM_FUZZED=300 $(BIN)/python -m pytest -q -n auto tests/desk/test_fuzzed.py

coverage: $(READY)
	$(BIN)/python -m pytest -q -n auto --dist worksteal -m "not browser" -p no:rerunfailures \
		--cov --cov-report=term --cov-report=json:build/coverage.json
	$(BIN)/python scripts/coverage_by_layer.py build/coverage.json

chromium postgresql libnss3-tools: $(READY)
	$(BIN)/python scripts/install_for_tests.py $@

check: $(READY)
	$(BIN)/ruff format --check .
	$(BIN)/ruff check .
	$(BIN)/lint-imports --no-logo
	$(BIN)/mypy

pin: $(READY)
	$(BIN)/python scripts/pin_leaf_counts.py

changes: $(READY)
	$(BIN)/python scripts/write_changes.py

docs: $(READY)
	$(BIN)/python scripts/write_docs.py

fit: $(READY)
	$(BIN)/python -m pip install --quiet --disable-pip-version-check -c constraints.txt -e ".[training]"
	$(BIN)/python -m training.fit_finding

bench: $(READY)
	$(BIN)/python -m pip install --quiet --disable-pip-version-check -c constraints.txt -e ".[bench]"
	$(BIN)/python bench/run.py

clean:
	rm -rf .venv .mypy_cache .pytest_cache .ruff_cache .hypothesis build dist
