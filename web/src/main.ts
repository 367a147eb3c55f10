import { mount } from 'svelte';
import App from './App.svelte';
import Local from './app/Local.svelte';
import { embeddedStudy, Unreadable } from './common/embedded';
import './style.css';

/** The one bundle has two hosts: the app, which says so, and the report, which carries its study inside. */
const inApp = document.querySelector('meta[name="platewright-host"]') !== null;
const target = document.getElementById('page')!;

async function mountReport() {
  const study = await embeddedStudy();
  document.title = `${study.name} · Platewright`;
  mount(App, { target, props: { study } });
}

function refuse(error: unknown) {
  if (!(error instanceof Unreadable)) throw error;
  target.append(Object.assign(document.createElement('p'), { textContent: error.message, role: 'alert' }));
}

if (inApp) mount(Local, { target });
else mountReport().catch(refuse);
