// Where this device keeps things between visits: IndexedDB, else localStorage, else nowhere.

export interface Cabinet {
  /** False when all is gone with the page. */
  lasting: boolean;
  read<T>(key: string): Promise<T | undefined>;
  /** Changes one entry in one go; what `edit` gives back is kept, undefined takes it out. */
  update<T>(key: string, edit: (old: T | undefined) => T | undefined): Promise<T | undefined>;
  /** Keys that begin so, in order. */
  keys(prefix: string): Promise<string[]>;
}

const STORE = "things";

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((done, failed) => {
    const request = indexedDB.open("toft", 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
    request.onblocked = () => failed(new Error("the device's store is held by an older page"));
  });
}

const settled = <T>(request: IDBRequest<T>): Promise<T> => new Promise((done, failed) => {
  request.onsuccess = () => done(request.result);
  request.onerror = () => failed(request.error);
});

function inDatabase(database: IDBDatabase): Cabinet {
  const store = (mode: IDBTransactionMode) => database.transaction(STORE, mode).objectStore(STORE);
  return {
    lasting: true,
    read: (key) => settled(store("readonly").get(key)),
    update: <T>(key: string, edit: (old: T | undefined) => T | undefined) =>
      new Promise<T | undefined>((done, failed) => {
        const transaction = database.transaction(STORE, "readwrite", { durability: "strict" });
        const things = transaction.objectStore(STORE);
        let kept: T | undefined;
        const request = things.get(key);
        request.onsuccess = () => {
          try {
            kept = edit(request.result as T | undefined);
            if (kept === undefined) things.delete(key);
            else things.put(kept, key);
          } catch (error) {
            failed(error);
            transaction.abort();
          }
        };
        transaction.oncomplete = () => done(kept);
        transaction.onabort = () => failed(transaction.error);
      }),
    keys: async (prefix) => (await settled(store("readonly").getAllKeys(
      IDBKeyRange.bound(prefix, `${prefix}\uffff`)))) as string[],
  };
}

interface TextStore {
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
  removeItem(key: string): void;
  all(): string[];
}

function inText(store: TextStore, lasting: boolean): Cabinet {
  const read = <T>(key: string): T | undefined => {
    const text = store.getItem(`toft/${key}`);
    return text === null ? undefined : JSON.parse(text) as T;
  };
  return {
    lasting,
    read: async (key) => read(key),
    update: async (key, edit) => {
      const kept = edit(read(key));
      if (kept === undefined) store.removeItem(`toft/${key}`);
      else store.setItem(`toft/${key}`, JSON.stringify(kept));
      return kept;
    },
    keys: async (prefix) => store.all().filter((key) => key.startsWith(`toft/${prefix}`))
      .map((key) => key.slice(5)).sort(),
  };
}

export function inMemory(): Cabinet {
  const things = new Map<string, string>();
  return inText({
    getItem: (key) => things.get(key) ?? null,
    setItem: (key, text) => void things.set(key, text),
    removeItem: (key) => void things.delete(key),
    all: () => [...things.keys()],
  }, false);
}

async function open(): Promise<Cabinet> {
  try {
    return inDatabase(await openDatabase());
  } catch {
    try {
      localStorage.setItem("toft/.", "1");
      localStorage.removeItem("toft/.");
      const all = () => Object.keys(localStorage);
      return inText({
        getItem: (key) => localStorage.getItem(key),
        setItem: (key, text) => localStorage.setItem(key, text),
        removeItem: (key) => localStorage.removeItem(key),
        all,
      }, true);
    } catch {
      return inMemory();
    }
  }
}

let opened: Promise<Cabinet> | undefined;

export function cabinet(): Promise<Cabinet> {
  return (opened ??= open());
}
