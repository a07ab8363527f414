-- What somebody says of a batch. Apart from its words, for it moves nothing, and is mostly said when the cook is long over.
CREATE TABLE made (
  cook INTEGER PRIMARY KEY REFERENCES cook (id) ON DELETE CASCADE,
  fruit TEXT NOT NULL,               -- a short name, by which batches are compared; may be empty
  jars INTEGER                       -- how many were filled
);

CREATE TABLE outcome (
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  after TEXT NOT NULL,               -- "day" or "month"
  firmness TEXT,                     -- "runny" to "stiff"
  taste TEXT NOT NULL,               -- words between commas; may be empty
  words TEXT NOT NULL,
  wall_ms INTEGER NOT NULL,          -- wall clock when it was said last, Unix milliseconds
  PRIMARY KEY (cook, after)
) WITHOUT ROWID;

-- Pictures as the program made them anew, so that nothing of the files that came in is left but what can be seen.
CREATE TABLE photo (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  digest TEXT NOT NULL,              -- SHA-256 of the file that came in, so that one that comes twice is kept once
  wall_ms INTEGER NOT NULL,
  width INTEGER NOT NULL,
  height INTEGER NOT NULL,
  jpeg BLOB NOT NULL,
  UNIQUE (cook, digest)
);

-- What the book's list needs of a cook that is over, worked out once from its readings. Can be made again at any time.
CREATE TABLE page (
  cook INTEGER PRIMARY KEY REFERENCES cook (id) ON DELETE CASCADE,
  version INTEGER NOT NULL,          -- of the working out
  alive_ms INTEGER NOT NULL,         -- the cook's when it was worked out: it may have gone on since
  batch TEXT NOT NULL,
  kitchen TEXT NOT NULL,
  water_boil_c REAL NOT NULL,
  rise_c REAL NOT NULL,              -- the rise that was wanted
  sugar_s REAL NOT NULL,
  boil_s REAL,
  gel_s REAL,
  off_s REAL,
  final_rise_c REAL,
  boil_minutes REAL
);

CREATE INDEX cook_started ON cook (started_ms DESC, id DESC);
